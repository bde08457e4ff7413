package heeltap.document;

/** How a column prints its values, for people (PDF, workbook) and for programs (CSV). */
public enum Format {
    TEXT,
    /** A money total. CSV: the currency's decimals, HALF_UP. People: the same. */
    MONEY,
    /** Money in some rows, numbers in others: each prints as what it is. */
    MONEY_OR_COUNT,
    /** A price, cost or margin of one serve. CSV: at least six significant digits. People: the currency's decimals. */
    UNIT_MONEY,
    /** Money of one ml or g. CSV: at least six significant digits. People: four significant digits. */
    FINE_MONEY,
    /** A percentage. CSV: at least six significant digits. People: one decimal, followed by the percent mark. */
    PERCENT,
    /** A whole number in most rows. CSV: exact. People: no decimals where whole, else up to two. */
    COUNT,
    /** A physical amount. CSV: at least six significant digits. People: up to one decimal above 100, else up to two. */
    AMOUNT,
    DATE,
    YES_NO;

    /** How one value of the column prints. */
    public Format of(CellValue value) {
        return this != MONEY_OR_COUNT ? this : value instanceof CellValue.Sum ? MONEY : COUNT;
    }

    /** Whether values stand at the right edge of their column. */
    public boolean isNumeric() {
        return switch (this) {
            case MONEY, MONEY_OR_COUNT, UNIT_MONEY, FINE_MONEY, PERCENT, COUNT, AMOUNT -> true;
            case TEXT, DATE, YES_NO -> false;
        };
    }
}
