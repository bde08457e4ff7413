package heeltap.load;

import heeltap.record.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Blank versions of everything people fill in, made from the definitions of the columns. */
public final class Templates {
    /** The name of the sheet or file that explains the headings; the reader of the book passes it over. */
    public static final String EXPLANATIONS = "How to fill in";

    private Templates() {}

    /** The sheets of a blank book: headings alone, and every setting with its default. */
    public static List<TemplateSheet> book() {
        return BookTables.ALL.stream()
                .map(table -> table.equals(BookTables.SETTINGS) ? settings() : blank(table))
                .toList();
    }

    /** The files of a blank month. */
    public static List<TemplateSheet> month() {
        return TemplateMonth.ALL.stream().map(Templates::blank).toList();
    }

    /** What each heading means, as a sheet of its own beside the blank ones. */
    public static TemplateSheet explanations() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Sheet or file", "Heading", "Needed", "Holds", "Empty means", "Explanation"));
        for (ColumnTable table : tables()) {
            for (Column column : table.columns()) {
                rows.add(List.of(
                        table.name(),
                        column.heading(),
                        need(column),
                        holds(column),
                        column.standard(),
                        column.explanation()));
            }
        }
        return new TemplateSheet(EXPLANATIONS, List.copyOf(rows));
    }

    /** The blank bar folder: {@code book/*.csv}, {@code month/*.csv} and the explanation of every heading. */
    public static List<TemplateFile> files() {
        List<TemplateFile> files = new ArrayList<>();
        book().forEach(sheet -> files.add(csv("book/" + sheet.name().toLowerCase(Locale.ROOT), sheet)));
        month().forEach(sheet -> files.add(csv("month/" + sheet.name(), sheet)));
        files.add(new TemplateFile("HEADINGS.md", headings()));
        return List.copyOf(files);
    }

    private static TemplateSheet blank(ColumnTable table) {
        return new TemplateSheet(
                table.name(),
                List.of(table.columns().stream().map(Column::heading).toList()));
    }

    private static TemplateSheet settings() {
        List<List<String>> rows = new ArrayList<>(blank(BookTables.SETTINGS).rows());
        for (Setting<?> setting : Setting.ALL) {
            rows.add(List.of(
                    setting.name(),
                    setting.standardText(),
                    (setting.required() ? "required: " : "") + setting.meaning()));
        }
        return new TemplateSheet(BookTables.SETTINGS.name(), List.copyOf(rows));
    }

    private static List<ColumnTable> tables() {
        List<ColumnTable> tables = new ArrayList<>(BookTables.ALL);
        tables.addAll(TemplateMonth.ALL);
        return tables;
    }

    private static TemplateFile csv(String path, TemplateSheet sheet) {
        String text = sheet.rows().stream()
                .map(row -> row.stream().map(Templates::quoted).collect(Collectors.joining(",")))
                .collect(Collectors.joining("\n", "", "\n"));
        return new TemplateFile(path + ".csv", text);
    }

    /** RFC 4180. */
    private static String quoted(String cell) {
        return cell.matches("[^\",\\r\\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }

    private static String headings() {
        StringBuilder text = new StringBuilder("""
                # What goes into each sheet

                The folder `book` holds what stays: copy it and fill it in. It may also be one workbook `book.xlsx` with a
                sheet for each file. The folder `month` holds the files of a month: copy it, name the copy after the month, such as
                `2026-10`, and fill in or replace what you have; remove the rest. Headings are matched without regard to case,
                spacing and order. A cell that is not needed may stay empty.

                """);
        for (ColumnTable table : tables()) {
            boolean month = TemplateMonth.ALL.contains(table);
            text.append(month ? "## month: `" + table.name() + "`\n\n" : "## book: " + table.name() + "\n\n");
            text.append(table.purpose())
                    .append(table.required() ? " Required." : "")
                    .append("\n\n");
            text.append("| heading | needed | holds | empty means | explanation |\n| --- | --- | --- | --- | --- |\n");
            for (Column column : table.columns()) {
                text.append("| ")
                        .append(String.join(
                                " | ",
                                column.heading(),
                                need(column),
                                holds(column),
                                column.standard(),
                                column.explanation()))
                        .append(" |\n");
            }
            text.append('\n');
            if (table.equals(BookTables.SETTINGS)) {
                appendSettings(text);
            }
        }
        return text.toString().stripTrailing() + "\n";
    }

    private static void appendSettings(StringBuilder text) {
        text.append("| setting | default | meaning |\n| --- | --- | --- |\n");
        for (Setting<?> setting : Setting.ALL) {
            text.append("| ")
                    .append(setting.name())
                    .append(" | ")
                    .append(setting.required() ? "required" : setting.standardText())
                    .append(" | ")
                    .append(setting.meaning())
                    .append(" |\n");
        }
        text.append('\n');
    }

    private static String need(Column column) {
        return switch (column.need()) {
            case NOTHING -> "";
            case HEADING -> "heading";
            case VALUE -> "yes";
        };
    }

    private static String holds(Column column) {
        String words = column.type() == Column.Type.CHOICE
                ? String.join(", ", column.choices())
                : column.type().words();
        String unit = column.unit().isEmpty()
                        || column.unit().equals(words)
                        || column.unit().equals("%")
                ? ""
                : ", " + column.unit();
        String bounds = column.bounds().words();
        return words + unit + (bounds.isEmpty() ? "" : ", " + bounds);
    }
}
