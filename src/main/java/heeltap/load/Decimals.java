package heeltap.load;

import java.text.DecimalFormatSymbols;
import java.util.Locale;

/** Which character separates the decimals of the numbers in a column. */
enum Decimals {
    POINT('.', ','),
    COMMA(',', '.');

    private final char decimal;
    private final char group;

    Decimals(char decimal, char group) {
        this.decimal = decimal;
        this.group = group;
    }

    char decimal() {
        return decimal;
    }

    char group() {
        return group;
    }

    /** As {@code files.csv} and the sheet Columns say it. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    Decimals other() {
        return this == POINT ? COMMA : POINT;
    }

    /** As a language writes decimals (CLDR). */
    static Decimals of(Locale language) {
        return DecimalFormatSymbols.getInstance(language).getDecimalSeparator() == ',' ? COMMA : POINT;
    }
}
