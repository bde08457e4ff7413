package heeltap.load;

import heeltap.source.Cell;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The totals and subtotals printed in a sheet, told from its rows and compared with what was read. A total may stand for
 * the rows since the last one or for all; voids may be in it or not.
 */
final class PrintedTotals {
    private final Layout layout;
    private final Reading reading;
    private final List<Field> summed;
    private final BigDecimal[] sums = zeros();
    private final BigDecimal[] sinceStart = zeros();
    private final BigDecimal[] voids = zeros();
    private final BigDecimal[] voidsAtStart = zeros();
    private final List<Printed> open = new ArrayList<>();
    private String section = "";
    private int rowsSinceStart;
    private @Nullable Printed grand;
    /** What the last total said: the next page brings it forward. */
    private Map<Field, BigDecimal> last = Map.of();

    /** A total row. */
    private record Printed(int row, String label, Map<Field, BigDecimal> values) {}

    PrintedTotals(Layout layout, Reading reading, Field... summed) {
        this.layout = layout;
        this.reading = reading;
        this.summed = List.of(summed).stream().filter(layout::has).toList();
    }

    private static BigDecimal[] zeros() {
        BigDecimal[] zeros = new BigDecimal[Field.SIZE];
        java.util.Arrays.fill(zeros, BigDecimal.ZERO);
        return zeros;
    }

    /** Adds the numbers of a row that is no total. */
    void add(Fields fields) {
        rowsSinceStart++;
        for (int i = 0; i < summed.size(); i++) {
            BigDecimal value = reading.number(fields, summed.get(i));
            if (value != null && value.signum() != 0) {
                int field = summed.get(i).at();
                sums[field] = sums[field].add(value);
            }
        }
    }

    /** The row just added names no item: a total may leave it out, and it may itself be the end of a section. */
    void addNameless(Fields fields) {
        addVoid(fields);
        boolean ends = !summed.isEmpty();
        for (Field field : summed) {
            BigDecimal value = reading.number(fields, field);
            BigDecimal before = sums[field.at()].subtract(sinceStart[field.at()]);
            ends &= value != null && same(before.subtract(value), value);
        }
        if (ends) {
            start();
        }
    }

    /** The row just added never happened: a total may leave it out. */
    void addVoid(Fields fields) {
        for (Field field : summed) {
            BigDecimal value = reading.number(fields, field);
            if (value != null) {
                voids[field.at()] = voids[field.at()].add(value);
            }
        }
    }

    void section(String name) {
        section = TextFold.fold(name);
    }

    /** Whether a row that names nothing known is a total: by its label, or by numbers that add up. */
    boolean isTotal(Row row, Fields fields, Field name) {
        String label = label(row, fields, name);
        String folded = TextFold.fold(label);
        if (RowWords.isFolded("total", folded) || RowWords.isFolded("subtotal", folded)) {
            return true;
        }
        Map<Field, BigDecimal> values = values(fields);
        if (values.isEmpty()) {
            return false;
        }
        boolean sectionsOwn = !section.isEmpty() && folded.equals(section) && matches(values, false);
        boolean named = sectionsOwn || isTotalWithName(folded) || (label.isEmpty() && isBare(fields));
        boolean ofSection = (!section.isEmpty() && folded.contains(section)) || isOfGroup(row, label, folded);
        return named && (ofSection || matches(values, true) || matches(values, false));
    }

    /** {@code Total Beer} in a row that says elsewhere that it is of the group Beer. */
    private static boolean isOfGroup(Row row, String label, String folded) {
        return row.cells().stream()
                .filter(cell ->
                        cell.number() == null && !TextFold.trim(cell.text()).equals(label))
                .map(cell -> TextFold.fold(cell.text()))
                .anyMatch(group -> !group.isEmpty()
                        && (folded.endsWith(" " + group) || folded.startsWith(group + " "))
                        && NumberText.readings(group) == NumberText.Readings.NONE);
    }

    /**
     * Nothing but sums, below two rows at least or in a section: a total that has lost its label rather than a sale its
     * name.
     */
    private boolean isBare(Fields fields) {
        return rowsSinceStart > (section.isEmpty() ? 1 : 0)
                && !fields.has(Field.DATE)
                && !fields.has(Field.TICKET)
                && !fields.has(Field.CODE)
                && !fields.has(Field.UNIT_PRICE);
    }

    private static boolean isTotalWithName(String folded) {
        int first = folded.indexOf(' ');
        return first > 0
                && (isTotalWord(folded.substring(0, first))
                        || isTotalWord(folded.substring(folded.lastIndexOf(' ') + 1)));
    }

    private static boolean isTotalWord(String word) {
        return RowWords.isFolded("total", word) || RowWords.isFolded("subtotal", word);
    }

    /** The first words of the row: a label may stand in any column. */
    private String label(Row row, Fields fields, Field name) {
        String own = fields.text(name);
        if (!own.isEmpty()) {
            return own;
        }
        for (Cell cell : row.cells()) {
            if (cell.number() == null
                    && cell.moment() == null
                    && NumberText.readings(cell.text()) == NumberText.Readings.NONE) {
                return TextFold.trim(cell.text());
            }
        }
        return "";
    }

    /** Takes a total row and compares it. */
    void total(Row row, Fields fields, Field name) {
        Map<Field, BigDecimal> values = values(fields);
        String label = label(row, fields, name);
        Printed printed = new Printed(row.number(), label, values);
        boolean sub = RowWords.is("subtotal", label);
        boolean again = sub && rowsSinceStart == 0 && values.equals(last);
        if (!sub && matches(values, true)) {
            grand = printed;
        } else if (!values.isEmpty() && !again && !matches(values, false) && !(sub && matches(values, true))) {
            open.add(printed);
        }
        last = values;
        start();
    }

    private void start() {
        rowsSinceStart = 0;
        System.arraycopy(sums, 0, sinceStart, 0, sums.length);
        System.arraycopy(voids, 0, voidsAtStart, 0, voids.length);
    }

    private Map<Field, BigDecimal> values(Fields fields) {
        Map<Field, BigDecimal> values = new EnumMap<>(Field.class);
        for (Field field : summed) {
            BigDecimal value = reading.number(fields, field);
            if (value != null) {
                values.put(field, value);
            }
        }
        return values;
    }

    private boolean matches(Map<Field, BigDecimal> values, boolean all) {
        return !values.isEmpty() && (matches(values, all, false) || matches(values, all, true));
    }

    private boolean matches(Map<Field, BigDecimal> values, boolean all, boolean withoutVoids) {
        for (Map.Entry<Field, BigDecimal> entry : values.entrySet()) {
            int field = entry.getKey().at();
            BigDecimal sum = all ? sums[field] : sums[field].subtract(sinceStart[field]);
            if (withoutVoids) {
                sum = sum.subtract(all ? voids[field] : voids[field].subtract(voidsAtStart[field]));
            }
            if (!same(sum, entry.getValue())) {
                return false;
            }
        }
        return true;
    }

    /** Alike but for sign and the dust of a sum that a spreadsheet computed in binary: no till prints six decimals. */
    private static boolean same(BigDecimal sum, BigDecimal printed) {
        return sum.abs()
                        .subtract(printed.abs())
                        .setScale(6, RoundingMode.HALF_EVEN)
                        .signum()
                == 0;
    }

    /**
     * Reports totals that nothing adds up to.
     *
     * @return the money total printed for the whole sheet; null where none is printed
     */
    @Nullable BigDecimal finish(ProblemLog log, Field... moneyFirst) {
        for (Printed printed : open) {
            if (matches(printed.values, true)) {
                grand = printed;
            } else {
                tell(printed, log);
                grand = grand == null && !RowWords.is("subtotal", printed.label) ? printed : grand;
            }
        }
        return grand == null ? null : money(grand, moneyFirst);
    }

    private static @Nullable BigDecimal money(Printed printed, Field... moneyFirst) {
        for (Field field : moneyFirst) {
            BigDecimal value = printed.values.get(field);
            if (value != null) {
                BigDecimal discount = printed.values.get(Field.DISCOUNT);
                return field == Field.GROSS && discount != null ? value.subtract(discount.abs()) : value;
            }
        }
        return null;
    }

    private void tell(Printed printed, ProblemLog log) {
        for (Map.Entry<Field, BigDecimal> entry : printed.values.entrySet()) {
            BigDecimal read = sums[entry.getKey().at()];
            if (!same(read, entry.getValue())) {
                log.fault(
                        ProblemKind.TOTAL_DIFFERS,
                        layout.cell(entry.getKey(), printed.row),
                        entry.getValue().toPlainString(),
                        "The total printed here is neither the sum of the rows above it nor that of the whole sheet, which is "
                                + read.toPlainString() + ".",
                        "Check whether rows are missing from the file, or export it again.");
                return;
            }
        }
    }
}
