package heeltap.document;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.time.LocalDate;

/** A typed value of a table's cell; how it is printed is the column's affair. */
public sealed interface CellValue {
    /** Absent: prints as nothing, never as zero. */
    record Blank() implements CellValue {}

    record Text(String text) implements CellValue {}

    /**
     * A word of a closed set.
     *
     * @param published as the CSV tables have it in every language
     * @param said in the language of the report, for people
     */
    record Term(String published, String said) implements CellValue {}

    /** Any number that is no money: counts, amounts, percentages (22.5 means 22.5 %). */
    record Figure(Exact number) implements CellValue {}

    record Sum(Money money) implements CellValue {}

    record Day(LocalDate date) implements CellValue {}

    record YesNo(boolean yes) implements CellValue {}

    Blank BLANK = new Blank();

    static CellValue of(@org.jspecify.annotations.Nullable String text) {
        return text == null || text.isEmpty() ? BLANK : new Text(text);
    }

    static CellValue of(@org.jspecify.annotations.Nullable Exact number) {
        return number == null ? BLANK : new Figure(number);
    }

    static CellValue of(long number) {
        return new Figure(Exact.of(number));
    }

    static CellValue of(@org.jspecify.annotations.Nullable Money money) {
        return money == null ? BLANK : new Sum(money);
    }

    static CellValue of(@org.jspecify.annotations.Nullable LocalDate date) {
        return date == null ? BLANK : new Day(date);
    }

    static CellValue of(boolean yes) {
        return new YesNo(yes);
    }
}
