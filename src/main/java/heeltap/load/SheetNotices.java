package heeltap.load;

import heeltap.record.ColumnRule;
import heeltap.record.KnownNames;
import heeltap.record.NameRule;
import heeltap.source.Cell;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is told of a sheet as a whole: columns that are not used, other tables in it, why it is refused. */
final class SheetNotices {
    private final MonthContext context;
    private final ProblemLog log;

    SheetNotices(MonthContext context, ProblemLog log) {
        this.context = context;
        this.log = log;
    }

    /** A sheet among the sales was read as a price list. */
    void tellPrices(Layout layout) {
        log.notice(
                ProblemKind.SHEET_NOT_READ,
                layout.sheet(),
                "",
                "It has prices, no quantities, dates or tickets, and names everything once: it was read as a price"
                        + " list, not as sales.",
                "Export it with a column of quantities if it lists what was sold.");
    }

    void tellUnread(Layout layout, FileKind kind) {
        for (ColumnRule rule : context.rules(layout.sheet().file())) {
            String wanted = TextFold.fold(rule.heading());
            boolean there = wanted.isEmpty()
                    || layout.headings().values().stream()
                            .anyMatch(heading -> TextFold.fold(heading).equals(wanted));
            if (!there && !TextFold.fold(rule.field()).equals(WideSheet.FIELD)) {
                log.notice(
                        ProblemKind.COLUMN_MISSING,
                        layout.sheet().withRow(layout.headingRow()),
                        rule.heading(),
                        "The sheet Columns maps this heading to " + rule.field() + ", but no column has it.",
                        "Correct the heading in Columns, or let the file's name begin otherwise.");
            }
        }
        List<String> unread = new ArrayList<>();
        layout.headings().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(heading -> {
            if (!layout.columns().containsValue(heading.getKey())) {
                unread.add(heading.getValue());
            }
        });
        long numbers = layout.above().stream().filter(SheetNotices::hasNumbers).count();
        if (kind != FileKind.INVOICES && numbers >= 2) {
            log.notice(
                    ProblemKind.SHEET_NOT_READ,
                    layout.sheet().withRow(layout.above().get(0).number()),
                    "",
                    "Another table stands above the heading in row " + layout.headingRow() + "; it is not read.",
                    "Put it on a sheet of its own if it should be.");
        }
        if (!unread.isEmpty()) {
            log.notice(
                    ProblemKind.COLUMN_UNKNOWN,
                    layout.sheet().withRow(layout.headingRow()),
                    String.join(", ", unread),
                    unread.size() == 1 ? "This column is not used." : "These columns are not used.",
                    "Map them in the sheet Columns of the book if they should be.");
        }
    }

    /** Two numbers or more: a row of a table rather than of a title. */
    private static boolean hasNumbers(Row row) {
        return row.cells().stream()
                        .filter(cell ->
                                cell.number() != null || NumberText.readings(cell.text()) != NumberText.Readings.NONE)
                        .count()
                >= 2;
    }

    /** Why no row of a sheet is the heading of such a file. */
    String whyRefused(List<Row> head, FileKind kind, List<ColumnRule> rules) {
        if (head.stream().allMatch(Row::isBlank)) {
            return "The file is empty.";
        }
        String items = kind == FileKind.SALES ? itemsInColumns(head) : "";
        if (!items.isEmpty()) {
            return "It has one column an item (" + items + "); say so in the sheet Columns of the book: Field \""
                    + WideSheet.FIELD + "\", Heading the first item.";
        }
        Set<Field> found = new LayoutFinder(kind, rules).nearest(head);
        List<String> missing = new ArrayList<>();
        for (List<Field> any : kind.required()) {
            if (any.stream().noneMatch(found::contains)) {
                missing.add(String.join(" or ", any.stream().map(Field::word).toList()));
            }
        }
        return "No row names the columns of " + kind.word()
                + (missing.isEmpty() ? "." : ": missing " + String.join(", ", missing) + ".");
    }

    /** The first names of a row that names at least three items; empty where no row does. */
    private String itemsInColumns(List<Row> head) {
        for (Row row : head) {
            List<String> items = new ArrayList<>();
            for (Cell cell : row.cells()) {
                String name = TextFold.trim(cell.text());
                boolean known =
                        context.names().ask(NameRule.Where.SALES, name, "").answer() == KnownNames.Answer.KNOWN;
                if (known && !items.contains(name)) {
                    items.add(name);
                }
            }
            if (items.size() >= 3) {
                return String.join(", ", items.subList(0, 3)) + " …";
            }
        }
        return "";
    }
}
