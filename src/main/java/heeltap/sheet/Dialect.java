package heeltap.sheet;

/**
 * How a text table is written.
 *
 * @param delimiter between fields; {@link #NONE} where there is one column only
 * @param quote around fields
 * @param backslash whether a backslash before a quote keeps it from closing; doubled quotes are read in any case
 * @param fields how many fields most records have; 0 while that is not known
 */
record Dialect(char delimiter, char quote, boolean backslash, int fields) {
    /** No character at all by definition of Unicode: never found in a text. */
    static final char NONE = '\uffff';

    static Dialect of(char delimiter) {
        return new Dialect(delimiter, '"', false, 0);
    }

    Dialect withFields(int count) {
        return new Dialect(delimiter, quote, backslash, count);
    }

    Dialect withBackslash() {
        return new Dialect(delimiter, quote, true, fields);
    }

    Dialect withQuote(char other) {
        return new Dialect(delimiter, other, backslash, fields);
    }

    String delimiterName() {
        return switch (delimiter) {
            case ',' -> "comma";
            case ';' -> "semicolon";
            case '\t' -> "tab";
            case '|' -> "bar";
            case ' ' -> "space";
            case NONE -> "none";
            default -> String.valueOf(delimiter);
        };
    }
}
