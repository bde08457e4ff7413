package heeltap.review;

import heeltap.cost.Purchase;
import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.document.TableRow.Emphasis;
import heeltap.quantity.Money;
import heeltap.record.Invoice;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import heeltap.source.Place;
import heeltap.stock.InvoiceTie;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The month's invoices and their lines. */
final class InvoiceTables {
    private static final Comparator<InvoiceTie> ORDER = Comparator.comparing(
                    (InvoiceTie tie) -> tie.invoice().supplier())
            .thenComparing(tie -> tie.invoice().date(), Comparator.nullsFirst(Comparator.naturalOrder()))
            .thenComparing(tie -> tie.invoice().number())
            .thenComparing(tie -> tie.invoice().place());

    private InvoiceTables() {}

    static Table invoices(MonthFigures month, Words words) {
        Filling table = Shapes.INVOICES
                .fill(words.texts())
                .formula("total", "{goods}-{discount}+{delivery}+{deposit}+{tax}")
                .formula(
                        "difference",
                        "IF({printed_total}=\"\",\"\",ROUND({total},"
                                + words.figures().currencyDecimals() + ")-{printed_total})");
        Map<String, Place> seen = new HashMap<>();
        for (InvoiceTie tie : month.ties().stream().sorted(ORDER).toList()) {
            Invoice invoice = tie.invoice();
            List<String> findings = findings(tie, month, seen, words);
            table.add(
                    findings.isEmpty() ? Emphasis.PLAIN : Emphasis.MARKED,
                    new Cells()
                            .set("supplier", CellValue.of(invoice.supplier()))
                            .set("invoice", CellValue.of(invoice.number()))
                            .set("date", CellValue.of(invoice.date()))
                            .set("lines", CellValue.of(invoice.lines().size()))
                            .set("goods", CellValue.of(tie.goods()))
                            .set("discount", CellValue.of(tie.discount()))
                            .set("delivery", CellValue.of(tie.delivery()))
                            .set("deposit", CellValue.of(tie.deposit()))
                            .set("tax", CellValue.of(tie.tax()))
                            .set("total", CellValue.of(tie.total()))
                            .set("printed_total", CellValue.of(invoice.printedTotal()))
                            .set("difference", CellValue.of(tie.difference().orElse(null)))
                            .set("finding", CellValue.of(String.join(" ", findings))));
        }
        return table.done();
    }

    private static List<String> findings(InvoiceTie tie, MonthFigures month, Map<String, Place> seen, Words words) {
        List<String> findings = new ArrayList<>();
        Invoice invoice = tie.invoice();
        tie.difference()
                .filter(difference -> !difference.isZero())
                .ifPresent(difference -> findings.add(words.say(
                        "invoice.differs",
                        words.money(difference.abs()),
                        words.say(difference.isPositive() ? "word.more" : "word.less"))));
        if (!invoice.number().isEmpty()) {
            Place first = seen.putIfAbsent(invoice.supplier() + "\n" + invoice.number(), invoice.place());
            if (first != null) {
                findings.add(words.say("invoice.twice", first.toString()));
            }
        }
        LocalDate date = invoice.date();
        if (date == null) {
            findings.add(words.say("invoice.undated"));
        } else if (!java.time.YearMonth.from(date).equals(month.month())) {
            findings.add(words.say("invoice.outside", words.date(date)));
        }
        long unclaimed = month.purchases().purchases().stream()
                .filter(line -> belongsTo(line, invoice))
                .filter(line -> line.ingredient() == null && !line.ignored())
                .count();
        if (unclaimed > 0) {
            findings.add(words.say("invoice.unclaimed", String.valueOf(unclaimed)));
        }
        return findings;
    }

    private static boolean belongsTo(Purchase line, Invoice invoice) {
        return invoice.lines().stream().anyMatch(printed -> printed.place().equals(line.place()));
    }

    static Table lines(MonthFigures month, Words words) {
        Filling table = Shapes.INVOICE_LINES.fill(words.texts());
        month.purchases().purchases().stream()
                .sorted(Comparator.comparing(Purchase::place))
                .forEach(line -> table.add(
                        line.ingredient() == null && !line.ignored() ? Emphasis.MARKED : Emphasis.PLAIN,
                        new Cells()
                                .set("file", CellValue.of(line.place().file()))
                                .set("row", CellValue.of(line.place().row()))
                                .set("supplier", CellValue.of(line.supplier()))
                                .set("invoice", CellValue.of(line.invoice()))
                                .set("date", CellValue.of(line.date()))
                                .set("product", CellValue.of(line.product()))
                                .set("ingredient", CellValue.of(line.ingredient()))
                                .set("quantity", CellValue.of(line.quantity()))
                                .set("pack", CellValue.of(packText(line)))
                                .set("base_quantity", CellValue.of(line.baseQuantity()))
                                .set("goods", CellValue.of(line.goods()))
                                .set("unit_cost", CellValue.of(unitCost(line)))));
        return table.done();
    }

    private static String packText(Purchase line) {
        return line.packText().isEmpty() && line.pack() != null ? line.pack().text() : line.packText();
    }

    private static @org.jspecify.annotations.Nullable Money unitCost(Purchase line) {
        return line.ingredient() == null ? null : line.unitCost();
    }
}
