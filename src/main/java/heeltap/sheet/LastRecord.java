package heeltap.sheet;

import java.util.List;

/** Compares the last record of a text with those before it, to tell a file that was cut off in the middle of a row. */
final class LastRecord {
    private static final int UNKNOWN = -1;
    private static final int MIXED = -2;

    private int width;
    private int decimals = UNKNOWN;
    private int line;
    private List<String> last = List.of();

    void take(int recordLine, List<String> fields) {
        if (fields.stream().allMatch(Blank::is)) {
            return;
        }
        compare();
        line = recordLine;
        last = List.copyOf(fields);
    }

    /** The last record so far is not the last of all: it shows what they look like. */
    private void compare() {
        width = Math.max(width, last.size());
        int own = decimalsOf(last);
        if (last.size() == width && own != UNKNOWN) {
            decimals = decimals == UNKNOWN || decimals == own ? own : MIXED;
        }
    }

    /** Digits behind the last point or comma of the last field; 0 for a whole number, unknown for no number. */
    private static int decimalsOf(List<String> fields) {
        String text = fields.isEmpty() ? "" : fields.get(fields.size() - 1).strip();
        if (!text.matches("[0-9.,]*[0-9.,]")) {
            return UNKNOWN;
        }
        int separator = Math.max(text.lastIndexOf('.'), text.lastIndexOf(','));
        return separator < 0 ? 0 : text.length() - separator - 1;
    }

    /** Whether it has fewer fields than the others, or its last number other decimals than all of theirs. */
    boolean isCutOff() {
        int own = decimalsOf(last);
        boolean otherDecimals = decimals > 0 && own != decimals;
        return width > 1 && (last.size() < width || otherDecimals);
    }

    int line() {
        return line;
    }

    String text() {
        return String.join(" | ", last);
    }
}
