package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.quantity.Pack;
import heeltap.record.Invoice;
import heeltap.record.InvoiceLine;
import heeltap.source.Place;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** Makes one invoice of its rows. */
final class InvoiceMaker {
    private static final BigDecimal CENT = new BigDecimal("0.01");

    private final MonthContext context;
    private final InvoiceSheet.InvoiceKey key;
    private final List<InvoiceRow> rows = new ArrayList<>();
    private InvoiceHeader header;
    private @Nullable LocalDate date;
    private final TreeSet<LocalDate> dates = new TreeSet<>();

    InvoiceMaker(MonthContext context, InvoiceSheet.InvoiceKey key, InvoiceHeader header) {
        this.context = context;
        this.key = key;
        this.header = header;
    }

    void add(InvoiceRow row, InvoiceHeader said, Reading.@Nullable Moment moment) {
        rows.add(row);
        header = said.number().equals(header.number()) ? said : header;
        date = date == null && moment != null ? moment.date() : date;
        if (moment != null) {
            dates.add(moment.date());
        }
    }

    /** The rows of another file that bear the same number. */
    void addAll(InvoiceMaker other) {
        rows.addAll(other.rows);
        dates.addAll(other.dates);
    }

    List<InvoiceRow> rows() {
        return rows;
    }

    List<InvoiceRow> lines() {
        return of(InvoiceRow.Role.LINE);
    }

    private List<InvoiceRow> of(InvoiceRow.Role role) {
        return rows.stream().filter(row -> row.role() == role).toList();
    }

    @Nullable LocalDate date() {
        return date != null ? date : header.date();
    }

    /** The currency printed in a column or above the lines; empty where none is. */
    String currency() {
        return rows.stream()
                .map(InvoiceRow::currency)
                .filter(c -> !c.isEmpty())
                .findFirst()
                .orElse(header.currency());
    }

    /** {@code invoice 124 of Supplier}. */
    String name() {
        String number = key.number().isEmpty() ? "without a number" : key.number();
        return "invoice " + number + (key.supplier().isEmpty() ? "" : " of " + key.supplier());
    }

    boolean isCreditNote() {
        return header.creditNote() || rows.stream().anyMatch(row -> RowWords.is("credit note", row.kind()));
    }

    Place place() {
        InvoiceRow first = rows.get(0);
        return first.part().layout().sheet().withRow(first.row().number());
    }

    /** The goods of a line as taken: its line total, else quantity times price less its discount. */
    BigDecimal goods(InvoiceRow line) {
        BigDecimal gross = product(line);
        BigDecimal total = line.number(Field.LINE_TOTAL);
        BigDecimal discount = lineDiscount(line);
        if (total == null) {
            return gross == null ? BigDecimal.ZERO : less(gross, discount);
        }
        boolean before = discount.signum() != 0
                && gross != null
                && isClose(gross, total)
                && !isClose(less(gross, discount), total);
        return before ? less(total, discount) : total;
    }

    /** Lines whose total is neither quantity times price, of a pack or of one of its units, nor that less the discount. */
    List<InvoiceRow> oddTotals() {
        return lines().stream().filter(this::isOdd).toList();
    }

    private boolean isOdd(InvoiceRow line) {
        BigDecimal gross = product(line);
        BigDecimal total = line.number(Field.LINE_TOTAL);
        if (gross == null || total == null) {
            return false;
        }
        // printed prices are rounded to the cent
        BigDecimal slack =
                orZero(line.number(Field.QUANTITY)).abs().movePointLeft(2).max(CENT);
        BigDecimal discount = lineDiscount(line);
        Exact units = pack(line.pack()).map(Pack::units).orElse(Exact.ONE);
        BigDecimal byUnit = gross.multiply(units.round(6, java.math.RoundingMode.HALF_EVEN));
        return List.of(gross, less(gross, discount), byUnit, less(byUnit, discount)).stream()
                .noneMatch(sum -> sum.abs().subtract(total.abs()).abs().compareTo(slack) <= 0);
    }

    static String grossOf(InvoiceRow line) {
        return orZero(product(line)).stripTrailingZeros().toPlainString();
    }

    boolean isElectronic() {
        return rows.get(0).part().layout().headingRow() == 0;
    }

    /** Whether line totals stand beside discounts without a unit price to say whether they are taken off already. */
    boolean hasOpenDiscount() {
        return lines().stream()
                .anyMatch(line -> lineDiscount(line).signum() != 0
                        && product(line) == null
                        && line.number(Field.LINE_TOTAL) != null);
    }

    private static @Nullable BigDecimal product(InvoiceRow line) {
        BigDecimal price = line.number(Field.UNIT_PRICE);
        BigDecimal quantity = line.number(Field.QUANTITY);
        return price == null || quantity == null ? null : price.multiply(quantity);
    }

    private static BigDecimal less(BigDecimal money, BigDecimal discount) {
        return money.signum() < 0 ? money.add(discount) : money.subtract(discount);
    }

    /** Printed line totals are rounded to the cent. */
    private static boolean isClose(BigDecimal a, BigDecimal b) {
        return a.subtract(b).abs().compareTo(CENT) < 0;
    }

    /** A line's own discount, positive; none where one discount is repeated on each row of the invoice. */
    private BigDecimal lineDiscount(InvoiceRow line) {
        if (isRepeated(Field.DISCOUNT)) {
            return BigDecimal.ZERO;
        }
        if (line.discountPercent() != null) {
            BigDecimal gross = product(line);
            BigDecimal base = gross != null ? gross : orZero(line.number(Field.LINE_TOTAL));
            return base.multiply(line.discountPercent()).movePointLeft(2).abs();
        }
        return orZero(line.number(Field.DISCOUNT)).abs();
    }

    /** Whether each row of the invoice shows one and the same value although its lines differ: it speaks for all. */
    private boolean isRepeated(Field field) {
        List<InvoiceRow> lines = lines();
        if (lines.size() < 2 || lines.get(0).number(field) == null) {
            return false;
        }
        BigDecimal first = orZero(lines.get(0).number(field));
        Set<BigDecimal> moneys = new HashSet<>();
        for (InvoiceRow line : lines) {
            BigDecimal value = line.number(field);
            BigDecimal gross = product(line);
            BigDecimal total = line.number(Field.LINE_TOTAL);
            boolean taken = field == Field.DISCOUNT && gross != null && total != null && !isClose(gross, total);
            if (value == null || value.compareTo(first) != 0 || taken) {
                return false;
            }
            moneys.add(orZero(line.money()).stripTrailingZeros());
        }
        return first.signum() != 0 && moneys.size() > 1;
    }

    /** A value that speaks for the invoice: once where it is repeated, else the sum of what is printed. */
    private @Nullable BigDecimal once(Field field) {
        Set<BigDecimal> distinct = new HashSet<>();
        BigDecimal sum = null;
        for (InvoiceRow row : rows) {
            BigDecimal value = row.role() == InvoiceRow.Role.LINE ? row.number(field) : null;
            if (value != null) {
                distinct.add(value.stripTrailingZeros());
                sum = sum == null ? value : sum.add(value);
            }
        }
        return distinct.size() == 1 ? distinct.iterator().next() : sum;
    }

    private @Nullable BigDecimal sum(InvoiceRow.Role role) {
        BigDecimal sum = null;
        for (InvoiceRow row : of(role)) {
            BigDecimal money = row.money();
            sum = money == null ? sum : sum == null ? money : sum.add(money);
        }
        return sum;
    }

    private @Nullable BigDecimal sum(Field field) {
        BigDecimal sum = null;
        for (InvoiceRow line : lines()) {
            BigDecimal value = line.number(field);
            sum = value == null ? sum : sum == null ? value : sum.add(value);
        }
        return sum;
    }

    private @Nullable BigDecimal printedTotal() {
        BigDecimal byRow = null;
        for (InvoiceRow row : of(InvoiceRow.Role.TOTAL)) {
            byRow = row.money() == null ? byRow : row.money();
        }
        BigDecimal column = once(Field.INVOICE_TOTAL);
        return byRow != null ? byRow : column != null ? column : header.total();
    }

    private @Nullable BigDecimal tax() {
        BigDecimal byRow = sum(InvoiceRow.Role.TAX);
        return byRow != null ? byRow : isRepeated(Field.TAX) ? once(Field.TAX) : sum(Field.TAX);
    }

    /** Whether a credit note is printed with plus signs, so that all of it turns negative. */
    boolean isTurned() {
        BigDecimal goods = BigDecimal.ZERO;
        for (InvoiceRow line : lines()) {
            goods = goods.add(goods(line));
        }
        return isCreditNote() && goods.signum() > 0;
    }

    Invoice make() {
        boolean turned = isTurned();
        boolean credit = isCreditNote();
        List<InvoiceLine> lines = new ArrayList<>();
        for (InvoiceRow row : lines()) {
            lines.add(line(row, turned, credit));
        }
        BigDecimal discount = orZero(sum(InvoiceRow.Role.DISCOUNT))
                .abs()
                .add(isRepeated(Field.DISCOUNT) ? orZero(once(Field.DISCOUNT)).abs() : BigDecimal.ZERO);
        BigDecimal delivery = orZero(sum(InvoiceRow.Role.DELIVERY)).add(orZero(once(Field.DELIVERY)));
        BigDecimal deposit = orZero(sum(InvoiceRow.Role.DEPOSIT)).add(orZero(sum(Field.DEPOSIT)));
        return new Invoice(
                key.supplier(),
                key.number(),
                date(),
                credit,
                rows.get(0).part().isWithTax(),
                lines,
                money(discount, credit),
                money(delivery, turned),
                money(deposit, turned),
                money(depositReturned(turned), !turned),
                orNull(tax(), turned),
                orNull(printedTotal(), turned),
                place(),
                List.copyOf(dates));
    }

    /** What of the deposits was given back, as printed: negative, or positive on a credit note printed with plus signs. */
    private BigDecimal depositReturned(boolean turned) {
        BigDecimal sum = BigDecimal.ZERO;
        for (InvoiceRow row : rows) {
            BigDecimal money = switch (row.role()) {
                case DEPOSIT -> orZero(row.money());
                case LINE -> orZero(row.number(Field.DEPOSIT));
                default -> BigDecimal.ZERO;
            };
            sum = money.signum() == (turned ? 1 : -1) ? sum.add(money) : sum;
        }
        return sum;
    }

    private InvoiceLine line(InvoiceRow row, boolean turned, boolean credit) {
        BigDecimal quantity = orZero(row.number(Field.QUANTITY));
        BigDecimal goods = goods(row);
        boolean back = goods.signum() < 0 && quantity.signum() > 0;
        return new InvoiceLine(
                row.product(),
                pack(row.pack()).orElse(null),
                row.pack(),
                Exact.of(turned || back ? quantity.negate() : quantity),
                money(goods, turned),
                money(lineDiscount(row), credit),
                money(orZero(row.number(Field.DEPOSIT)), turned),
                isRepeated(Field.TAX) ? null : orNull(row.number(Field.TAX), turned),
                row.part().layout().sheet().withRow(row.row().number()),
                row.number(Field.QUANTITY) == null ? null : Exact.of(quantity),
                Money.of(goods));
    }

    /** As if for a liquid: the ingredient is not known yet; a mass says so itself. */
    private Optional<Pack> pack(String text) {
        return text.isEmpty() ? Optional.empty() : context.packs().parse(text, Measure.ML);
    }

    private static Money money(BigDecimal value, boolean negated) {
        return Money.of(negated ? value.negate() : value);
    }

    private static @Nullable Money orNull(@Nullable BigDecimal value, boolean negated) {
        return value == null ? null : money(value, negated);
    }

    private static BigDecimal orZero(@Nullable BigDecimal value) {
        return value == null ? BigDecimal.ZERO : value;
    }
}
