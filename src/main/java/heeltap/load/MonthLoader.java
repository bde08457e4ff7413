package heeltap.load;

import heeltap.record.Book;
import heeltap.record.ColumnRule;
import heeltap.record.FileAccount;
import heeltap.record.KnownNames;
import heeltap.record.Loss;
import heeltap.record.Month;
import heeltap.record.SetAside;
import heeltap.record.StockCount;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import heeltap.source.Sheet;
import heeltap.source.SheetFacts;
import heeltap.source.WithProblems;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Reads the files of a month's folder into records. Nothing is dropped: each row is used, ignored or set aside. */
public final class MonthLoader {
    private static final int HEADING_WITHIN = 100;

    private final MonthContext context;
    private final RowsOut out = new RowsOut(new ProblemLog());
    private final List<Supplier<FileAccount>> accounts = new ArrayList<>();
    private final PriceList prices = new PriceList();
    private final SheetNotices notices;
    private final SalesFiles sales;
    private final InvoiceFiles invoices;
    private final List<StockCount> closing = new ArrayList<>();
    private final List<StockCount> opening = new ArrayList<>();
    private final List<Loss> losses = new ArrayList<>();

    private MonthLoader(MonthContext context) {
        this.context = context;
        this.notices = new SheetNotices(context, out.log());
        this.sales = new SalesFiles(context, out, prices);
        this.invoices = new InvoiceFiles(context, out);
    }

    /** Told now and then how many rows of the present sheet have been read. */
    @FunctionalInterface
    public interface Progress {
        void rows(int rows);
    }

    /**
     * Reads a month.
     *
     * @param files in any order; they are taken by name
     * @param names answers whether the book knows a name
     * @param packs reads the texts of packs
     * @return the month, with a problem for everything its reader should know; faults of single rows are told once a
     *     column
     * @throws IllegalStateException if control totals do not hold, which is a fault of the program
     */
    public static WithProblems<Month> load(
            YearMonth month, List<MonthFile> files, Book book, KnownNames names, PackReader packs, Progress progress) {
        List<MonthFile> sorted =
                files.stream().sorted(Comparator.comparing(MonthFile::path)).toList();
        return new MonthLoader(new MonthContext(month, book, names, packs, progress)).load(sorted);
    }

    private WithProblems<Month> load(List<MonthFile> files) {
        files.forEach(this::read);
        invoices.finish();
        sales.finish();
        List<FileAccount> done = accounts.stream()
                .map(Supplier::get)
                .sorted(Comparator.comparing(account -> account.place().file()))
                .toList();
        done.forEach(this::tellNoRows);
        List<SetAside> setAside = out.setAside().stream()
                .sorted(Comparator.comparing(SetAside::place))
                .toList();
        Month month = new Month(
                context.month(), sales.sales(), invoices.invoices(), closing, opening, losses, setAside, done);
        return new WithProblems<>(month, out.log().all());
    }

    private void tellNoRows(FileAccount account) {
        if (account.headingRow() > 0 && account.rows() == 0) {
            out.log()
                    .notice(
                            ProblemKind.VALUE_MISSING,
                            account.place(),
                            "",
                            "There is a heading but no row below it.",
                            "Export it again if the month had any " + account.kind() + ".");
        }
    }

    private void read(MonthFile file) {
        FileKind kind = context.kind(file.path());
        if (file.isLeftOut()) {
            file.problems().forEach(out.log()::add);
            accounts.add(() -> Tally.unread(facts(file), "not read"));
        } else if (!file.problems().isEmpty()) {
            Problem why = file.problems().get(0);
            refuse(facts(file), why.reason(), why.remedy());
        } else if (kind == null) {
            notRead(file);
        } else if (file.bytes() != null) {
            readXml(file, file.bytes(), kind);
        } else if (file.sheets().isEmpty()) {
            refuse(facts(file), "The file has no sheets.");
        } else {
            readSheets(file, kind);
        }
    }

    private void readXml(MonthFile file, MonthFile.Bytes bytes, FileKind kind) {
        Place place = Place.of(file.path());
        if (kind != FileKind.INVOICES) {
            refuse(facts(file), "Only invoices are read from XML.");
            return;
        }
        try (InputStream stream = bytes.open()) {
            EInvoices.EInvoice invoice = EInvoices.read(stream, place);
            for (String fault : EInvoiceSums.faults(invoice)) {
                out.log().fault(ProblemKind.TOTAL_DIFFERS, place, "", fault, "Ask the supplier for a correct invoice.");
            }
            accounts.add(invoices.read(new EInvoiceSheet(invoice, place, context.packs())));
        } catch (EInvoices.Unreadable e) {
            refuse(facts(file), e.reason());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static SheetFacts facts(MonthFile file) {
        return file.sheets().isEmpty()
                ? new SheetFacts(Place.of(file.path()), "", "", false, List.of())
                : file.sheets().get(0).facts();
    }

    private void notRead(MonthFile file) {
        SheetFacts facts = facts(file);
        accounts.add(() -> Tally.unread(
                new SheetFacts(Place.of(file.path()), facts.encoding(), facts.delimiter(), false, List.of()),
                "not read"));
        out.log()
                .notice(
                        ProblemKind.FILE_NOT_READ,
                        Place.of(file.path()),
                        "",
                        "The file was not read: its name does not say what it is.",
                        "Let the name begin with one of " + FileKind.beginnings() + " if it should be read.");
    }

    private void readSheets(MonthFile file, FileKind kind) {
        List<Sheet> sheets =
                file.sheets().stream().map(sheet -> unfolded(sheet, kind)).toList();
        List<@Nullable Layout> layouts = new ArrayList<>();
        for (Sheet sheet : sheets) {
            layouts.add(sheet.facts().hidden() ? null : layout(sheet, kind));
        }
        boolean any = layouts.stream().anyMatch(layout -> layout != null);
        for (int i = 0; i < sheets.size(); i++) {
            Sheet sheet = sheets.get(i);
            sheet.facts().problems().forEach(out.log()::add);
            Layout layout = layouts.get(i);
            if (layout != null) {
                notices.tellUnread(layout, kind);
                readSheet(sheet, layout, kind);
            } else if (any || sheet.facts().hidden()) {
                skip(sheet);
            } else {
                refuse(
                        sheet.facts(),
                        notices.whyRefused(
                                head(sheet),
                                kind,
                                context.rules(sheet.facts().place().file())));
            }
        }
    }

    /** A sheet that Columns says has one column an item becomes one of rows. */
    private Sheet unfolded(Sheet sheet, FileKind kind) {
        for (ColumnRule rule : context.rules(sheet.facts().place().file())) {
            if (kind == FileKind.SALES && TextFold.fold(rule.field()).equals(WideSheet.FIELD)) {
                Sheet wide = WideSheet.of(sheet, head(sheet), rule.heading());
                if (wide != null) {
                    out.log()
                            .notice(
                                    ProblemKind.VALUE_AMBIGUOUS,
                                    sheet.facts().place(),
                                    rule.heading(),
                                    "The sheet has one column an item, as Columns says; each filled cell counts as a row.",
                                    "Remove the row from Columns if this is not right.");
                    return wide;
                }
            }
        }
        return sheet;
    }

    private @Nullable Layout layout(Sheet sheet, FileKind kind) {
        return new LayoutFinder(kind, context.rules(sheet.facts().place().file()))
                .find(sheet.facts().place(), head(sheet));
    }

    private static List<Row> head(Sheet sheet) {
        List<Row> head = new ArrayList<>();
        sheet.read(row -> {
            head.add(row);
            return head.size() < HEADING_WITHIN;
        });
        return head;
    }

    private void readSheet(Sheet sheet, Layout layout, FileKind kind) {
        switch (kind) {
            case PRICES -> {
                FileAccount account = prices.read(sheet, layout, context, out);
                accounts.add(() -> account);
            }
            case SALES -> {
                if (PriceList.isOne(sheet, layout)) {
                    notices.tellPrices(layout);
                    readSheet(sheet, layout, FileKind.PRICES);
                } else {
                    readSales(sheet, layout);
                }
            }
            case INVOICES -> accounts.add(invoices.read(sheet, layout));
            case STOCK, STOCK_OPENING, LOSSES -> {
                CountSheet counts = new CountSheet(sheet, layout, context, kind, out);
                counts.read();
                (kind == FileKind.STOCK ? closing : opening).addAll(counts.counts());
                losses.addAll(counts.losses());
                FileAccount account = counts.account();
                accounts.add(() -> account);
            }
        }
    }

    private void readSales(Sheet sheet, Layout layout) {
        SalesColumns columns = SalesColumns.of(sheet, layout, context, out.log());
        if (columns.refusal().isEmpty()) {
            accounts.add(sales.read(sheet, columns.layout()));
        } else {
            refuse(sheet.facts(), columns.refusal());
        }
    }

    private void skip(Sheet sheet) {
        SheetFacts facts = sheet.facts();
        accounts.add(() -> Tally.unread(facts, "not read"));
        out.log()
                .notice(
                        ProblemKind.SHEET_NOT_READ,
                        facts.place(),
                        "",
                        facts.hidden()
                                ? "The sheet is hidden and was not read."
                                : "The sheet has no heading row of this kind of file and was not read.",
                        "Nothing is to be done if it holds nothing of the month.");
    }

    private void refuse(SheetFacts facts, String reason) {
        refuse(facts, reason, "Give its columns usual headings, or map them in the sheet Columns of the book.");
    }

    private void refuse(SheetFacts facts, String reason, String remedy) {
        accounts.add(() -> Tally.unread(facts, "refused"));
        out.setAside().add(new SetAside(facts.place(), "The file was refused: " + reason, "", null, null, List.of()));
        out.log()
                .add(Problem.fault(
                        ProblemKind.FILE_UNREADABLE,
                        facts.place(),
                        "",
                        "The file was refused as a whole: " + reason,
                        remedy));
    }
}
