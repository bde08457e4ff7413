package heeltap.load;

import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The problems that concern the book as a whole. */
public final class BookProblems {
    private BookProblems() {}

    /** For a bar folder that holds both kinds of book, none of which can be preferred. */
    public static Problem secondBook(String first, String second) {
        return Problem.fatal(
                ProblemKind.FILE_TWICE,
                Place.of(second),
                "",
                "The bar folder holds two books, " + first + " and " + second + ".",
                "Keep the one that holds and move the other out of the folder.");
    }

    static Problem sheetMissing(Place book, ColumnTable table) {
        return Problem.fatal(
                ProblemKind.SHEET_MISSING,
                book,
                "",
                "The book has no sheet " + table.name() + ".",
                "Add a sheet " + table.name() + " with the headings " + headings(table)
                        + "; the command start makes blank ones.");
    }

    static Problem columnMissing(Place sheet, ColumnTable table, List<Column> missing) {
        List<String> names = missing.stream().map(Column::heading).toList();
        return Problem.fatal(
                ProblemKind.COLUMN_MISSING,
                sheet,
                "",
                "The sheet " + table.name() + " has no column " + String.join(" and no column ", names) + ".",
                "Put the headings " + headings(table) + " in one row above the data.");
    }

    static Problem unknownColumn(Place heading, String raw, ColumnTable table) {
        List<String> known = table.columns().stream().map(Column::heading).toList();
        String hint =
                BookText.nearest(raw, known).map(name -> " Is it " + name + "?").orElse("");
        return Problem.notice(
                ProblemKind.COLUMN_UNKNOWN,
                heading,
                raw,
                "The sheet " + table.name() + " has no such column, so nothing is read from it." + hint,
                "Rename it if it should be read.");
    }

    static Problem repeatedColumn(Place heading, String raw, String usedColumn) {
        return Problem.notice(
                ProblemKind.COLUMN_UNKNOWN,
                heading,
                raw,
                "This heading stands twice; column " + usedColumn + " is used and this one is not.",
                "Remove one of them.");
    }

    static Problem unnamedColumn(Place column) {
        return Problem.notice(
                ProblemKind.COLUMN_UNKNOWN,
                column,
                "",
                "This column has no heading, so nothing is read from it.",
                "Give it a heading if it should be read.");
    }

    static Problem unknownSheet(Place sheet, String name) {
        List<String> known = BookTables.ALL.stream().map(ColumnTable::name).toList();
        String hint = BookText.nearest(name, known)
                .map(near -> " Is it " + near + "?")
                .orElse("");
        return Problem.notice(
                ProblemKind.SHEET_NOT_READ,
                sheet,
                name,
                "The book has no sheet of this name, so it is not read." + hint,
                "Rename it if it should be read.");
    }

    static Problem sheetTwice(Place sheet, Place first, String name) {
        return Problem.fatal(
                ProblemKind.FILE_TWICE,
                sheet,
                name,
                "The book has this sheet twice; the other is " + first + ".",
                "Keep one of them.");
    }

    private static String headings(ColumnTable table) {
        List<String> needed = new ArrayList<>();
        for (Column column : table.columns()) {
            if (column.need() != Column.Need.NOTHING) {
                needed.add(column.heading());
            }
        }
        return String.join(" and ", needed);
    }

    /** {@code book/drinks.csv} and {@code book.xlsx, sheet Drinks} are both the sheet drinks. */
    static String sheetName(Place place) {
        if (!place.sheet().isEmpty()) {
            return place.sheet();
        }
        String file = String.valueOf(Path.of(place.file()).getFileName());
        int dot = file.lastIndexOf('.');
        return dot > 0 ? file.substring(0, dot) : file;
    }
}
