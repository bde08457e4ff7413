package heeltap.report;

import java.util.List;
import java.util.Optional;

/** The widths of a table's columns and the size of its type, in points. */
final class ColumnWidths {
    private static final float STEP = 0.25f;
    private static final float WIDEST_GAP = 20;
    /** A table that wants less of the width than this keeps to what it wants. */
    private static final float NARROW = 0.72f;
    /** Type of this size reads like the largest. */
    private static final float FULL = Look.TABLE - 0.5f;
    /** Smaller type must save so much. */
    private static final float MUCH_LOWER = 0.85f;
    /** In smaller type it is better that names wrap. */
    private static final float SMALL = 6.75f;
    /** A text that is wider than this is a sentence, not a name, and wraps. */
    private static final float SENTENCE = 220;
    /** The first column names its row, and does not break up to this width. */
    private static final float NAME = 120;

    private final float size;
    private final float[] widths;
    private final float gap;
    private final boolean natural;

    private ColumnWidths(float size, float[] widths, float gap, boolean natural) {
        this.size = size;
        this.widths = widths;
        this.gap = gap;
        this.natural = natural;
    }

    /** Whether each column has what it wants, in type about as large as the largest. */
    boolean isNatural() {
        return natural;
    }

    float size() {
        return size;
    }

    float of(int column) {
        return widths[column];
    }

    float left(int column) {
        float left = 0;
        for (int i = 0; i < column; i++) {
            left += widths[i] + gap;
        }
        return left;
    }

    /** From the left edge of the first column to the right edge of the last. */
    float across() {
        return left(widths.length - 1) + widths[widths.length - 1];
    }

    /**
     * In the largest type in which only sentences wrap, where that is not too small; else in one in which names wrap too.
     * Empty where even the smallest type does not fit.
     */
    static Optional<ColumnWidths> of(TableLayout layout, List<Integer> columns) {
        Optional<ColumnWidths> largest = namesWhole(layout, columns);
        if (largest.isPresent()) {
            return largest;
        }
        for (float size = Look.TABLE; size >= Look.TABLE_FLOOR; size -= STEP) {
            Wants wants = new Wants(layout, columns, size);
            boolean fits = sum(wants.least) <= wants.room;
            if (fits && (size < SMALL || (size < FULL && shrinkIsMild(wants.natural, wants.least, wants.room)))) {
                return Optional.of(
                        new ColumnWidths(size, between(wants.natural, wants.least, wants.room), wants.gap, false));
            }
        }
        return Optional.empty();
    }

    /** The largest type; a smaller one where that saves much height, since fewer sentences wrap. */
    private static Optional<ColumnWidths> namesWhole(TableLayout layout, List<Integer> columns) {
        Optional<ColumnWidths> best = Optional.empty();
        float lowest = 0;
        for (float size = Look.TABLE; size >= SMALL; size -= STEP) {
            Wants wants = new Wants(layout, columns, size);
            boolean allWhole = sum(wants.natural) <= wants.room;
            float[] names = wants.names();
            if (allWhole || sum(names) <= wants.room) {
                ColumnWidths found = allWhole
                        ? spread(layout, columns, size, wants.natural, wants.gap, wants.room)
                        : new ColumnWidths(size, between(wants.natural, names, wants.room), wants.gap, false);
                float height = layout.height(columns, found.widths, size);
                if (best.isEmpty() || height < lowest * MUCH_LOWER) {
                    best = Optional.of(found);
                    lowest = height;
                }
            }
            if (allWhole) {
                return best;
            }
        }
        return best;
    }

    /** What columns want in a size of type, in points. */
    private static final class Wants {
        /** For no line to break. */
        private final float[] natural;
        /** For no word to break. */
        private final float[] least;

        private final float gap = 2 * TableLayout.padding();
        /** For all columns together, gaps left out. */
        private final float room;

        private Wants(TableLayout layout, List<Integer> columns, float size) {
            natural = new float[columns.size()];
            least = new float[columns.size()];
            room = layout.available() - gap * (columns.size() - 1);
            for (int c = 0; c < columns.size(); c++) {
                float[] wants = layout.wants(columns.get(c), size);
                float indent = layout.indent(columns, c);
                natural[c] = wants[0] + indent;
                least[c] = wants[1] + indent;
            }
            least[0] = Math.max(least[0], Math.min(natural[0], NAME));
        }

        /** For no name to break, though sentences do. */
        private float[] names() {
            float[] names = natural.clone();
            for (int c = 0; c < names.length; c++) {
                names[c] = Math.max(least[c], Math.min(names[c], SENTENCE));
            }
            return names;
        }
    }

    static ColumnWidths squeezed(int columns, float available) {
        float gap = 2 * TableLayout.padding();
        float[] widths = new float[columns];
        java.util.Arrays.fill(widths, (available - gap * (columns - 1)) / columns);
        return new ColumnWidths(Look.TABLE_FLOOR, widths, gap, false);
    }

    /** Whether wrapping at this size leaves the flexible columns at least half of what they want. */
    private static boolean shrinkIsMild(float[] natural, float[] least, float room) {
        float flexible = 0;
        for (int i = 0; i < natural.length; i++) {
            flexible += natural[i] - least[i];
        }
        return room - sum(least) >= flexible * 0.3f;
    }

    /** Room left over goes to the gaps first, then to the columns of text. */
    private static ColumnWidths spread(
            TableLayout layout, List<Integer> columns, float size, float[] natural, float gap, float room) {
        float left = room - sum(natural);
        if (sum(natural) + 2 * gap * (columns.size() - 1) < layout.available() * NARROW) {
            return new ColumnWidths(size, natural, 2 * gap, size >= FULL);
        }
        float wider = columns.size() < 2 ? gap : Math.min(WIDEST_GAP, gap + left / (columns.size() - 1));
        // never below nothing by rounding: a column less wide than its one word would split it
        left = Math.max(0, left - (wider - gap) * (columns.size() - 1));
        long texts = columns.stream().filter(c -> !layout.isNumeric(c)).count();
        float[] widths = natural.clone();
        for (int i = 0; i < widths.length; i++) {
            boolean numeric = layout.isNumeric(columns.get(i));
            if (texts > 0 && !numeric) {
                widths[i] += left / texts;
            } else if (texts == 0) {
                widths[i] += left / widths.length;
            }
        }
        return new ColumnWidths(size, widths, wider, size >= FULL);
    }

    /** Columns wider than a common cap give way to it, so that narrow columns keep what they want. */
    private static float[] between(float[] natural, float[] least, float room) {
        float low = 0;
        float high = room;
        for (int i = 0; i < 40; i++) {
            float cap = (low + high) / 2;
            if (sum(capped(natural, least, cap)) <= room) {
                low = cap;
            } else {
                high = cap;
            }
        }
        return capped(natural, least, low);
    }

    private static float[] capped(float[] natural, float[] least, float cap) {
        float[] widths = new float[natural.length];
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(least[i], Math.min(natural[i], cap));
        }
        return widths;
    }

    private static float sum(float[] values) {
        float sum = 0;
        for (float value : values) {
            sum += value;
        }
        return sum;
    }
}
