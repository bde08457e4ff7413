package heeltap.document;

import heeltap.quantity.Exact;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How many decimals each column of a table prints for people: one number for all its rows and its total, so that decimals
 * stand under each other. CSV does not follow it.
 */
public final class ColumnDigits {
    /** The most that a count or an amount prints. */
    public static final int MOST = 2;

    /** From here on an amount that stands among hundreds shows in one decimal. */
    private static final Exact TENTH = Exact.of("0.1");

    private static final int MOST_FINE = 6;
    private static final int FINE_DIGITS = 3;

    private final List<Integer> decimals = new ArrayList<>();

    /** @param currencyDecimals those of the table's money */
    public ColumnDigits(Table table, int currencyDecimals) {
        for (int c = 0; c < table.columns().size(); c++) {
            decimals.add(of(table.columns().get(c).format(), numbers(table, c), currencyDecimals));
        }
    }

    /** Of a column of counts, amounts or fine money; others have the decimals of their format, here 0. */
    public int of(int column) {
        return decimals.get(column);
    }

    private static int of(Format format, List<Exact> numbers, int currencyDecimals) {
        return switch (format) {
            case COUNT -> needed(numbers);
            case AMOUNT -> amount(numbers);
            case FINE_MONEY -> fine(numbers, currencyDecimals);
            case TEXT, MONEY, MONEY_OR_COUNT, UNIT_MONEY, PERCENT, DATE, YES_NO -> 0;
        };
    }

    private static List<Exact> numbers(Table table, int column) {
        List<Exact> numbers = new ArrayList<>();
        table.rows().forEach(row -> number(row.cells().get(column)).ifPresent(numbers::add));
        table.total().flatMap(row -> number(row.cells().get(column))).ifPresent(numbers::add);
        return numbers;
    }

    private static Optional<Exact> number(CellValue value) {
        return value instanceof CellValue.Figure figure
                ? Optional.of(figure.number())
                : value instanceof CellValue.Sum sum ? Optional.of(sum.money().amount()) : Optional.empty();
    }

    /** As many as the numbers have, up to {@link #MOST}. */
    private static int needed(List<Exact> numbers) {
        return numbers.stream()
                .mapToInt(number ->
                        Math.max(0, rounded(number).stripTrailingZeros().scale()))
                .max()
                .orElse(0);
    }

    /** Hundredths of a thing that is counted in hundreds say nothing, unless another row is as small as they are. */
    private static int amount(List<Exact> numbers) {
        int needed = needed(numbers);
        boolean large = numbers.stream().anyMatch(number -> number.abs().compareTo(Exact.HUNDRED) >= 0);
        boolean small = numbers.stream()
                .anyMatch(
                        number -> rounded(number).signum() != 0 && number.abs().compareTo(TENTH) < 0);
        return large && !small ? Math.min(1, needed) : needed;
    }

    /** As many as show three digits of the smallest, without zeros that all of them end in. */
    private static int fine(List<Exact> numbers, int currencyDecimals) {
        int wanted = numbers.stream()
                .filter(number -> !number.isZero())
                .mapToInt(number ->
                        number.toSignificant(FINE_DIGITS).stripTrailingZeros().scale())
                .max()
                .orElse(currencyDecimals);
        return Math.max(currencyDecimals, Math.min(MOST_FINE, wanted));
    }

    private static BigDecimal rounded(Exact number) {
        return number.round(MOST, RoundingMode.HALF_UP);
    }
}
