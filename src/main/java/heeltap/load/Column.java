package heeltap.load;

import java.util.List;

/**
 * One column of a sheet people fill in: the one definition that the reader, the blank template, the messages and the
 * documentation share.
 *
 * @param heading as it stands in the heading row
 * @param type what its cells hold
 * @param need whether it must be there
 * @param onFault what a cell costs that cannot be read
 * @param unit such as {@code ml}; empty for none
 * @param standard what an empty cell means, as a person would type it; empty where it means nothing
 * @param bounds which numbers it takes
 * @param choices the words it takes; empty where it takes any
 * @param explanation one line for the person who fills it in
 */
public record Column(
        String heading,
        Type type,
        Need need,
        OnFault onFault,
        String unit,
        String standard,
        ColumnBounds bounds,
        List<String> choices,
        String explanation) {
    /** What a cell holds. */
    public enum Type {
        TEXT("text"),
        NUMBER("number"),
        PERCENT("percent"),
        MONEY("money"),
        DATE("date"),
        TIME("time"),
        YES_NO("yes or no"),
        CHOICE("one of"),
        UNIT("unit"),
        PACK("pack"),
        AMOUNT("amount");

        private final String words;

        Type(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }

        /** Whether decimals are to be found in it. */
        boolean isNumeric() {
            return this == NUMBER || this == PERCENT || this == MONEY || this == AMOUNT;
        }
    }

    /** What must be there. */
    public enum Need {
        NOTHING,
        /** The heading. */
        HEADING,
        /** The heading, and a value in each row. */
        VALUE
    }

    /** What a fault of a cell costs. */
    public enum OnFault {
        /** The cell: it counts as empty. */
        CELL,
        /** The row: it is left out. */
        ROW,
        /** The drink or preparation, and all that it is in: they are left out by name. */
        ITEM
    }

    static Column of(String heading, Type type, String explanation) {
        return new Column(heading, type, Need.NOTHING, OnFault.CELL, "", "", ColumnBounds.ANY, List.of(), explanation);
    }

    static Column text(String heading, String explanation) {
        return of(heading, Type.TEXT, explanation);
    }

    static Column number(String heading, String unit, ColumnBounds bounds, String explanation) {
        return new Column(heading, Type.NUMBER, Need.NOTHING, OnFault.CELL, unit, "", bounds, List.of(), explanation);
    }

    static Column percent(String heading, ColumnBounds bounds, String explanation) {
        return new Column(heading, Type.PERCENT, Need.NOTHING, OnFault.CELL, "%", "", bounds, List.of(), explanation);
    }

    static Column money(String heading, ColumnBounds bounds, String explanation) {
        return new Column(heading, Type.MONEY, Need.NOTHING, OnFault.CELL, "", "", bounds, List.of(), explanation);
    }

    static Column choice(String heading, String explanation, String... choices) {
        return new Column(
                heading,
                Type.CHOICE,
                Need.NOTHING,
                OnFault.CELL,
                "",
                "",
                ColumnBounds.ANY,
                List.of(choices),
                explanation);
    }

    Column needs(Need newNeed) {
        return new Column(
                heading,
                type,
                newNeed,
                newNeed == Need.VALUE ? OnFault.ROW : onFault,
                unit,
                standard,
                bounds,
                choices,
                explanation);
    }

    Column costing(OnFault newOnFault) {
        return new Column(heading, type, need, newOnFault, unit, standard, bounds, choices, explanation);
    }

    Column standing(String newStandard) {
        return new Column(heading, type, need, onFault, unit, newStandard, bounds, choices, explanation);
    }
}
