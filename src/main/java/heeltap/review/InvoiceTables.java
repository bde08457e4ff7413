package heeltap.review;

import heeltap.cost.Purchase;
import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.document.TableRow.Emphasis;
import heeltap.quantity.Money;
import heeltap.record.Invoice;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import heeltap.stock.InvoiceTie;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/** The month's invoices and their lines. */
final class InvoiceTables {
    private InvoiceTables() {}

    static Table invoices(List<InvoiceFindings> invoices, Words words) {
        Filling table = Shapes.INVOICES
                .fill(words.texts())
                .formula("total", "{goods}-{discount}+{delivery}+{deposit}+{tax}")
                .formula(
                        "difference",
                        "IF({printed_total}=\"\",\"\",ROUND({total},"
                                + words.figures().currencyDecimals() + ")-{printed_total})");
        for (String column : new String[] {"lines", "goods", "discount", "delivery", "deposit", "tax", "total"}) {
            table.totalFormula(column, "SUM({" + column + ":all})");
        }
        for (InvoiceFindings one : invoices) {
            InvoiceTie tie = one.tie();
            Invoice invoice = tie.invoice();
            List<String> findings = one.sentences(words);
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
        return invoices.isEmpty()
                ? table.done()
                : table.total(total(invoices, words)).done();
    }

    private static Cells total(List<InvoiceFindings> invoices, Words words) {
        int lines = invoices.stream()
                .mapToInt(one -> one.tie().invoice().lines().size())
                .sum();
        return new Cells()
                .set("supplier", CellValue.of(words.say("word.total")))
                .set("lines", CellValue.of(lines))
                .set("goods", sum(invoices, InvoiceTie::goods))
                .set("discount", sum(invoices, InvoiceTie::discount))
                .set("delivery", sum(invoices, InvoiceTie::delivery))
                .set("deposit", sum(invoices, InvoiceTie::deposit))
                .set("tax", sum(invoices, InvoiceTie::tax))
                .set("total", sum(invoices, InvoiceTie::total));
    }

    private static CellValue sum(List<InvoiceFindings> invoices, Function<InvoiceTie, Money> part) {
        return CellValue.of(
                invoices.stream().map(InvoiceFindings::tie).map(part).reduce(Money.ZERO, Money::plus));
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

    static String packText(Purchase line) {
        return line.packText().isEmpty() && line.pack() != null ? line.pack().text() : line.packText();
    }

    private static @org.jspecify.annotations.Nullable Money unitCost(Purchase line) {
        return line.ingredient() == null ? null : line.unitCost();
    }
}
