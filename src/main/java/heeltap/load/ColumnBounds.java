package heeltap.load;

import heeltap.quantity.Exact;

/** Which numbers a column takes. */
public enum ColumnBounds {
    ANY(""),
    NOT_NEGATIVE("0 or more"),
    POSITIVE("above 0"),
    NEGATIVE("below 0"),
    TO_100("from 0 to 100"),
    BELOW_100("from 0 to below 100"),
    ABOVE_0_TO_100("above 0 and at most 100"),
    DENSITY("above 0 and at most 25 (g/ml)"),
    LIQUID_CELSIUS("from -40 to 100 (°C)"),
    ICE_CELSIUS("from -40 to 0 (°C)");

    private static final Exact DENSEST = Exact.of(25);
    private static final Exact COLDEST = Exact.of(-40);

    private final String words;

    ColumnBounds(String words) {
        this.words = words;
    }

    /** For explanations and messages; empty where any number will do. */
    public String words() {
        return words;
    }

    public boolean allow(Exact number) {
        return switch (this) {
            case ANY -> true;
            case NOT_NEGATIVE -> !number.isNegative();
            case POSITIVE -> number.isPositive();
            case NEGATIVE -> number.isNegative();
            case TO_100 -> !number.isNegative() && !number.isGreaterThan(Exact.HUNDRED);
            case BELOW_100 -> !number.isNegative() && number.isLessThan(Exact.HUNDRED);
            case ABOVE_0_TO_100 -> number.isPositive() && !number.isGreaterThan(Exact.HUNDRED);
            case DENSITY -> number.isPositive() && !number.isGreaterThan(DENSEST);
            case LIQUID_CELSIUS -> !number.isLessThan(COLDEST) && !number.isGreaterThan(Exact.HUNDRED);
            case ICE_CELSIUS -> !number.isLessThan(COLDEST) && !number.isPositive();
        };
    }
}
