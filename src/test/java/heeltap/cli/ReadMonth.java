package heeltap.cli;

import heeltap.record.FileAccount;
import heeltap.record.Invoice;
import heeltap.record.Loss;
import heeltap.record.Month;
import heeltap.record.SaleTotal;
import heeltap.record.SetAside;
import heeltap.record.StockCount;
import heeltap.source.Place;
import heeltap.source.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What was read of a month, as lines of text under the names of what they are; what is empty is left out. */
final class ReadMonth {
    private static final String FOLDER = "2026-10/";

    private ReadMonth() {}

    static List<String> lines(Month month, List<Problem> problems) {
        List<String> lines = new ArrayList<>();
        section(lines, "files", month.files().stream().map(ReadMonth::file));
        section(lines, "sales", month.sales().stream().map(ReadMonth::sale));
        section(lines, "invoices", month.invoices().stream().flatMap(ReadMonth::invoice));
        section(lines, "closing", month.closing().stream().map(ReadMonth::count));
        section(lines, "opening", month.opening().stream().map(ReadMonth::count));
        section(lines, "losses", month.losses().stream().map(ReadMonth::loss));
        section(lines, "set aside", month.setAside().stream().map(ReadMonth::setAside));
        section(lines, "messages", problems.stream().map(ReadMonth::problem));
        return lines;
    }

    private static void section(List<String> lines, String name, Stream<String> content) {
        List<String> found = content.toList();
        if (!found.isEmpty()) {
            lines.add(name);
            lines.addAll(found);
        }
    }

    private static String row(Object... cells) {
        return String.join(" | ", Stream.of(cells).map(String::valueOf).toList());
    }

    private static String or(@Nullable Object value) {
        return value == null ? "-" : value.toString();
    }

    private static String where(Place place) {
        String file = place.file().replace(FOLDER, "");
        return (place.sheet().isEmpty() ? file : file + " [" + place.sheet() + "]")
                + (place.row() == 0 ? "" : " " + place.row());
    }

    private static String file(FileAccount file) {
        String text = (file.encoding() + " " + file.delimiter()).strip();
        return row(
                where(file.place()) + (text.isEmpty() ? "" : " (" + text + ")"),
                file.kind(),
                "heading " + file.headingRow(),
                "dates " + (file.dates().isEmpty() ? "-" : file.dates()),
                "decimals " + (file.decimals().isEmpty() ? "-" : file.decimals()),
                file.rows() + " rows = " + file.used() + " used + " + file.ignored() + " ignored + " + file.setAside()
                        + " aside",
                "quantity " + or(file.quantity()),
                "money " + or(file.money()) + " = " + or(file.usedMoney()) + " + " + or(file.ignoredMoney()) + " + "
                        + or(file.setAsideMoney()),
                "printed " + or(file.printedTotal()));
    }

    private static String sale(SaleTotal sale) {
        return row(
                sale.item() + (sale.code().isEmpty() ? "" : " #" + sale.code()),
                or(sale.day()),
                sale.kind().name().toLowerCase(Locale.ROOT),
                sale.quantity(),
                or(sale.net()));
    }

    private static Stream<String> invoice(Invoice invoice) {
        String head = row(
                invoice.supplier(),
                invoice.number(),
                or(invoice.date()),
                invoice.creditNote() ? "credit note" : "invoice",
                "discount " + invoice.discount(),
                "delivery " + invoice.delivery(),
                "deposit " + invoice.deposit(),
                "tax " + or(invoice.tax()),
                "total " + or(invoice.printedTotal()));
        Stream<String> lines = invoice.lines().stream()
                .map(line -> "  "
                        + row(
                                line.product(),
                                line.packText().isEmpty() ? "-" : line.packText(),
                                line.quantity(),
                                "goods " + line.goods(),
                                "discount " + line.discount(),
                                "deposit " + line.deposit()));
        return Stream.concat(Stream.of(head), lines);
    }

    private static String count(StockCount count) {
        return row(count.item(), count.count(), count.unit(), count.location());
    }

    private static String loss(Loss loss) {
        return row(
                loss.item(),
                or(loss.date()),
                loss.amount(),
                loss.unit(),
                loss.reason().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    }

    private static String setAside(SetAside row) {
        return row(
                where(row.place()),
                row.reason(),
                row.text(),
                or(row.quantity()),
                or(row.money()),
                String.join("; ", row.nearest()));
    }

    private static String problem(Problem problem) {
        return problem.severity().name().toLowerCase(Locale.ROOT) + " "
                + problem.toString().replace(FOLDER, "");
    }
}
