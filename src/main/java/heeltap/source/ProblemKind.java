package heeltap.source;

/** The closed list of what can be wrong with an input. The catalogue of messages is generated from it. */
public enum ProblemKind {
    /** The file cannot be understood as a whole. */
    FILE_UNREADABLE,
    /** The file's name does not say what it is. */
    FILE_NOT_READ,
    /** The same thing is there twice: two books, or the same file again. */
    FILE_TWICE,
    /** A sheet that must be there is not. */
    SHEET_MISSING,
    /** A sheet or table that is not used. */
    SHEET_NOT_READ,
    /** A column that must be there is not. */
    COLUMN_MISSING,
    /** A column that nothing reads. */
    COLUMN_UNKNOWN,
    /** A setting that must be there is not. */
    SETTING_MISSING,
    /** A setting of no known name. */
    SETTING_UNKNOWN,
    /** A required cell is blank. */
    VALUE_MISSING,
    /** A cell that is not what its column asks for. */
    VALUE_INVALID,
    /** A value that could be read two ways. */
    VALUE_AMBIGUOUS,
    /** A value that is possible but looks like a typing error. */
    VALUE_DOUBTFUL,
    /** Two rows name the same thing. */
    NAME_TWICE,
    /** A name that nothing in the book has. */
    NAME_UNKNOWN,
    /** A unit that is not known, or does not fit its ingredient. */
    UNIT_UNKNOWN,
    /** Mass and volume meet without a density. */
    DENSITY_MISSING,
    /** A pack text that cannot be understood. */
    PACK_UNREADABLE,
    /** A preparation that contains itself. */
    SPEC_CYCLE,
    /** A spec that contradicts itself or its item. */
    SPEC_FAULT,
    /** A drink or preparation without a spec. */
    SPEC_MISSING,
    /** No price anywhere. */
    PRICE_MISSING,
    /** A target that cannot be reached. */
    TARGET_UNREACHABLE,
    /** A date outside the month. */
    DATE_OUTSIDE,
    /** Rows that repeat rows of another file. */
    ROW_REPEATED,
    /** A printed total that the rows do not give. */
    TOTAL_DIFFERS,
    /** An invoice in another currency than the bar's. */
    CURRENCY_OTHER,
    /** A count that cannot be. */
    COUNT_IMPOSSIBLE
}
