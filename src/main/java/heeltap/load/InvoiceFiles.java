package heeltap.load;

import heeltap.record.FileAccount;
import heeltap.record.Invoice;
import heeltap.record.KnownNames;
import heeltap.record.NameRule;
import heeltap.record.Setting;
import heeltap.source.ProblemKind;
import heeltap.source.Sheet;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Gathers the invoices of all sheets of a month: one may go on in another sheet, or stand in two files. */
final class InvoiceFiles {
    private final MonthContext context;
    private final RowsOut out;
    private final Map<InvoiceSheet.InvoiceKey, InvoiceMaker> makers = new LinkedHashMap<>();
    private final Map<InvoiceSheet, BigDecimal> printed = new HashMap<>();
    private final List<Invoice> invoices = new ArrayList<>();

    InvoiceFiles(MonthContext context, RowsOut out) {
        this.context = context;
        this.out = out;
    }

    /** The account is complete only after {@link #finish}. */
    Supplier<FileAccount> read(Sheet sheet, Layout layout) {
        boolean withTax = context.settings().get(Setting.INVOICE_PRICES_INCLUDE_TAX);
        return read(new InvoiceSheet(sheet, layout, withTax, context, out));
    }

    /** An electronic invoice; its prices are without tax. */
    Supplier<FileAccount> read(EInvoiceSheet sheet) {
        return read(new InvoiceSheet(sheet, sheet.layout(), false, context, out));
    }

    private Supplier<FileAccount> read(InvoiceSheet part) {
        Map<InvoiceSheet.InvoiceKey, InvoiceMaker> here = new LinkedHashMap<>();
        part.read((key, row, header, moment) -> here.computeIfAbsent(
                        folded(key), k -> new InvoiceMaker(context, key, header))
                .add(row, header, moment));
        takeFileTotal(part, here);
        here.forEach((key, maker) -> merge(key, maker));
        return () -> part.account(printed.get(part));
    }

    private static InvoiceSheet.InvoiceKey folded(InvoiceSheet.InvoiceKey key) {
        return new InvoiceSheet.InvoiceKey(TextFold.fold(key.supplier()), TextFold.fold(key.number()), key.block());
    }

    /** A last total row that is the sum of several invoices speaks for the sheet, not for its last invoice. */
    private void takeFileTotal(InvoiceSheet part, Map<InvoiceSheet.InvoiceKey, InvoiceMaker> here) {
        BigDecimal sum = BigDecimal.ZERO;
        InvoiceMaker last = null;
        for (InvoiceMaker maker : here.values()) {
            for (InvoiceRow line : maker.lines()) {
                sum = sum.add(maker.goods(line));
            }
            last = maker;
        }
        List<InvoiceRow> rows = last == null ? List.of() : last.rows();
        if (here.size() < 2 || rows.isEmpty()) {
            return;
        }
        InvoiceRow row = rows.get(rows.size() - 1);
        BigDecimal money = row.money();
        boolean total = row.role() == InvoiceRow.Role.TOTAL || row.role() == InvoiceRow.Role.SUBTOTAL;
        if (total && money != null && money.compareTo(sum) == 0) {
            rows.remove(rows.size() - 1);
            part.tally().fate(Tally.Fate.IGNORED, null, null);
            printed.put(part, money);
        }
    }

    private void merge(InvoiceSheet.InvoiceKey key, InvoiceMaker maker) {
        InvoiceMaker earlier = makers.get(key);
        if (earlier == null) {
            makers.put(key, maker);
        } else if (isRepeated(earlier, maker)) {
            setAside(
                    maker,
                    ProblemKind.ROW_REPEATED,
                    "The row repeats " + earlier.name() + " of " + earlier.place() + ".");
        } else {
            earlier.addAll(maker);
        }
    }

    /** Whether each line stands in the earlier one too. */
    private static boolean isRepeated(InvoiceMaker earlier, InvoiceMaker later) {
        List<String> left = new ArrayList<>();
        earlier.lines().forEach(row -> left.add(row.signature()));
        return !later.lines().isEmpty() && later.lines().stream().allMatch(row -> left.remove(row.signature()));
    }

    /** Makes the invoices, in the order of their first rows. */
    void finish() {
        for (InvoiceMaker maker : makers.values()) {
            LocalDate date = maker.date();
            String currency = maker.currency();
            if (!currency.isEmpty() && !isOwn(currency)) {
                setAside(
                        maker,
                        ProblemKind.CURRENCY_OTHER,
                        "The " + maker.name() + " is in " + currency + ", not in the bar's currency.");
            } else if (date != null && !YearMonth.from(date).equals(context.month())) {
                setAside(
                        maker,
                        ProblemKind.DATE_OUTSIDE,
                        "The " + maker.name() + " is of " + date + ", not of " + context.month() + ".");
            } else if (maker.lines().isEmpty()) {
                setAside(maker, ProblemKind.VALUE_MISSING, "The row belongs to no line of goods.");
            } else {
                if (maker.hasOpenDiscount() && !maker.isElectronic()) {
                    out.log()
                            .notice(
                                    ProblemKind.VALUE_AMBIGUOUS,
                                    maker.place(),
                                    maker.name(),
                                    "Line totals beside discounts were taken to be after them; before them the goods would be less by the discounts.",
                                    "Add the unit price, which tells which it is.");
                }
                tellOddTotals(maker);
                invoices.add(maker.make());
                maker.rows().forEach(row -> settle(maker, row));
            }
        }
    }

    private void tellOddTotals(InvoiceMaker maker) {
        List<InvoiceRow> odd = maker.oddTotals();
        if (!odd.isEmpty()) {
            InvoiceRow first = odd.get(0);
            BigDecimal total = first.number(Field.LINE_TOTAL);
            out.log()
                    .notice(
                            ProblemKind.TOTAL_DIFFERS,
                            first.part()
                                    .layout()
                                    .cell(Field.LINE_TOTAL, first.row().number()),
                            total == null ? "" : total.toPlainString(),
                            "The line total is not quantity times unit price, which is " + InvoiceMaker.grossOf(first)
                                    + "; the line total was taken."
                                    + (odd.size() == 1
                                            ? ""
                                            : " So too in " + (odd.size() - 1) + " more lines of this invoice."),
                            "Check the line on the paper.");
        }
    }

    private boolean isOwn(String currency) {
        Currency own = context.settings().find(Setting.CURRENCY).orElse(null);
        return own == null
                || currency.equalsIgnoreCase(own.getCurrencyCode())
                || CurrencyMarks.isOf(currency, own.getCurrencyCode());
    }

    private void settle(InvoiceMaker maker, InvoiceRow row) {
        Tally tally = row.part().tally();
        if (row.role() != InvoiceRow.Role.LINE) {
            boolean real = row.role() == InvoiceRow.Role.DELIVERY
                    || row.role() == InvoiceRow.Role.DISCOUNT
                    || row.role() == InvoiceRow.Role.DEPOSIT;
            BigDecimal money = real ? money(maker, row) : null;
            tally.in(null, money);
            tally.fate(real ? Tally.Fate.USED : Tally.Fate.IGNORED, null, money);
            return;
        }
        KnownNames.Verdict verdict = context.names().ask(NameRule.Where.INVOICES, row.product(), row.code());
        BigDecimal quantity = row.number(Field.QUANTITY);
        BigDecimal money = maker.goods(row);
        tally.in(quantity, money);
        switch (verdict.answer()) {
            case KNOWN -> tally.fate(Tally.Fate.USED, quantity, money);
            case IGNORED -> tally.fate(Tally.Fate.IGNORED, quantity, money);
            case UNKNOWN -> {
                tally.fate(Tally.Fate.SET_ASIDE, quantity, money);
                out.setAside(
                        row.part().layout().cell(Field.PRODUCT, row.row().number()),
                        ProblemKind.NAME_UNKNOWN,
                        "The product is not known.",
                        row.product(),
                        quantity,
                        money,
                        verdict.nearest());
            }
        }
    }

    /** A discount row takes money off, whatever its sign. */
    private static @Nullable BigDecimal money(InvoiceMaker maker, InvoiceRow row) {
        BigDecimal money = row.money();
        return money == null || row.role() != InvoiceRow.Role.DISCOUNT
                ? money
                : maker.isCreditNote() ? money.abs() : money.abs().negate();
    }

    private void setAside(InvoiceMaker maker, ProblemKind kind, String reason) {
        for (InvoiceRow row : maker.rows()) {
            boolean line = row.role() == InvoiceRow.Role.LINE;
            BigDecimal quantity = line ? row.number(Field.QUANTITY) : null;
            BigDecimal money = line ? maker.goods(row) : null;
            row.part().tally().in(quantity, money);
            row.part().tally().fate(Tally.Fate.SET_ASIDE, quantity, money);
            out.setAside(
                    row.part().layout().sheet().withRow(row.row().number()),
                    kind,
                    reason,
                    RowsOut.text(row.row()),
                    quantity,
                    money,
                    List.of());
        }
    }

    List<Invoice> invoices() {
        return invoices;
    }
}
