package heeltap.load;

import heeltap.source.Cell;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What a column of numbers says about its decimals, all of its cells together. */
final class NumberEvidence {
    /** Up to one cell in so many may contradict the others and is then unreadable; more make the column so. */
    private static final int FEW = 20;

    /** Fewer cells may have three digits behind the separator by chance. */
    private static final int ENOUGH = 3;

    private long seen;
    private long stored;
    private long point;
    private long comma;
    private long open;
    private String example = "";
    private BigDecimal asPoint = BigDecimal.ZERO;
    private BigDecimal asComma = BigDecimal.ZERO;

    void see(Cell cell) {
        seen++;
        if (cell.number() != null) {
            stored++;
            return;
        }
        String text = cell.text();
        int shape = quickShape(text);
        if (shape < 0) {
            seeWritten(text);
        } else if (shape == '.') {
            point++;
        } else if (shape == ',') {
            comma++;
        }
    }

    /** 0 for digits only, the separator where it can only be a decimal one, -1 where it takes a longer look. */
    private static int quickShape(String text) {
        char separator = 0;
        int behind = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                behind++;
            } else if ((c == '.' || c == ',') && separator == 0 && i > 0) {
                separator = c;
                behind = 0;
            } else {
                return -1;
            }
        }
        return separator == 0 ? 0 : behind == 3 || behind == 0 ? -1 : separator;
    }

    private void seeWritten(String text) {
        String number = TextFold.trim(text).replace("%", "");
        switch (NumberText.readings(number)) {
            case POINT_ONLY -> point++;
            case COMMA_ONLY -> comma++;
            case TWO -> {
                example = open++ == 0 ? TextFold.trim(text) : example;
                asPoint = asPoint.add(orZero(NumberText.parse(number, Decimals.POINT)));
                asComma = asComma.add(orZero(NumberText.parse(number, Decimals.COMMA)));
            }
            default -> {
                // no number, or the same number either way
            }
        }
    }

    private static BigDecimal orZero(@Nullable BigDecimal value) {
        return value == null ? BigDecimal.ZERO : value;
    }

    boolean isStored() {
        return stored > 0;
    }

    /** Whether any number is written as text with a separator. */
    boolean isWritten() {
        return point + comma + open > 0;
    }

    /** The style that the cells themselves prove; null where they prove none or contradict each other. */
    @Nullable Decimals proven() {
        if (point * FEW < comma) {
            return Decimals.COMMA;
        }
        return comma * FEW < point ? Decimals.POINT : null;
    }

    /** Whether the cells contradict each other too often to read any of them. */
    boolean isContradictory() {
        return point > 0 && comma > 0 && proven() == null;
    }

    /** How many cells the proven style cannot read. */
    long contradicting() {
        return Math.min(point, comma);
    }

    /** How many cells can be read both ways. */
    long open() {
        return open;
    }

    String example() {
        return example;
    }

    /** The style under which the separators of all cells part thousands; null where any cell says otherwise. */
    @Nullable Decimals thousands() {
        int mark = Math.max(example.lastIndexOf('.'), example.lastIndexOf(','));
        boolean all = mark >= 0 && open == seen && open >= ENOUGH;
        return all ? (example.charAt(mark) == '.' ? Decimals.COMMA : Decimals.POINT) : null;
    }

    /** The sum of the cells that can be read both ways, under a style. */
    BigDecimal openSum(Decimals style) {
        return style == Decimals.POINT ? asPoint : asComma;
    }
}
