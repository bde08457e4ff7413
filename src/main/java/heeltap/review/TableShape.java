package heeltap.review;

import heeltap.document.CellValue;
import heeltap.document.Column;
import heeltap.document.Format;
import heeltap.document.Table;
import heeltap.document.TableRow;
import heeltap.document.TableRow.Emphasis;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A table of the contract before it has rows: its name, its columns in order and how each prints. The one place where
 * the columns of {@code tables/*.csv} are named.
 */
record TableShape(String name, Map<String, Format> columns) {
    /** One pair is {@code key:FORMAT}; a pair without a format is text. */
    static TableShape of(String name, String... pairs) {
        Map<String, Format> columns = new LinkedHashMap<>();
        for (String pair : pairs) {
            int colon = pair.indexOf(':');
            String key = colon < 0 ? pair : pair.substring(0, colon);
            Format format = colon < 0 ? Format.TEXT : Format.valueOf(pair.substring(colon + 1));
            if (columns.put(key, format) != null) {
                throw new IllegalArgumentException(name + " has two columns " + key);
            }
        }
        return new TableShape(name, columns);
    }

    /** Starts a table with headings and notes in the language of the texts. */
    Filling fill(Texts texts) {
        return new Filling(this, texts);
    }

    /** A table being filled; rows keep the order in which they come. */
    static final class Filling {
        private final TableShape shape;
        private final Texts texts;
        private final Map<String, Column> columns = new LinkedHashMap<>();
        private final List<TableRow> rows = new ArrayList<>();
        private Optional<TableRow> total = Optional.empty();

        private Filling(TableShape shape, Texts texts) {
            this.shape = shape;
            this.texts = texts;
            shape.columns.forEach((key, format) -> columns.put(
                    key, Column.of(key, texts.heading(shape.name, key), texts.note(shape.name, key), format)));
        }

        Filling formula(String key, String formula) {
            columns.computeIfPresent(key, (k, column) -> column.withFormula(formula));
            return this;
        }

        Filling input(String key, Column.Input numbers) {
            columns.computeIfPresent(key, (k, column) -> column.asInput(numbers));
            return this;
        }

        Filling totalFormula(String key, String formula) {
            columns.computeIfPresent(key, (k, column) -> column.withTotal(formula));
            return this;
        }

        Filling add(Emphasis emphasis, Cells cells) {
            rows.add(row(emphasis, cells));
            return this;
        }

        Filling add(Cells cells) {
            return add(Emphasis.PLAIN, cells);
        }

        Filling total(Cells cells) {
            total = Optional.of(row(Emphasis.PLAIN, cells));
            return this;
        }

        private TableRow row(Emphasis emphasis, Cells cells) {
            return new TableRow(cells.inOrder(shape), emphasis);
        }

        Table done() {
            return new Table(
                    shape.name,
                    texts.say("table." + shape.name + ".title"),
                    texts.find("table." + shape.name + ".about").orElse(""),
                    List.copyOf(columns.values()),
                    rows,
                    total);
        }
    }

    /**
     * The live formula of a row's share, in percent, of all rows with the same name. Names are compared as they are: marks
     * that would stand for other letters, or for a comparison, mean themselves.
     */
    static String share(String amount, String name) {
        String literal = "{" + name + "}";
        for (String mark : new String[] {"~", "*", "?"}) {
            literal = "SUBSTITUTE(" + literal + ",\"" + mark + "\",\"~" + mark + "\")";
        }
        return "{" + amount + "}/SUMIF({" + name + ":all},\"=\"&" + literal + ",{" + amount + ":all})*100";
    }

    /** The cells of one row by key; a key never set is blank, a key the shape lacks is a mistake. */
    static final class Cells {
        private final Map<String, CellValue> values = new LinkedHashMap<>();

        Cells set(String key, CellValue value) {
            values.put(key, value);
            return this;
        }

        private List<CellValue> inOrder(TableShape shape) {
            for (String key : values.keySet()) {
                if (!shape.columns.containsKey(key)) {
                    throw new IllegalArgumentException(shape.name + " has no column " + key);
                }
            }
            return shape.columns.keySet().stream()
                    .map(key -> values.getOrDefault(key, CellValue.BLANK))
                    .toList();
        }
    }
}
