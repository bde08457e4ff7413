package heeltap.load;

import heeltap.record.ColumnRule;
import heeltap.source.Cell;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import heeltap.source.Sheet;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What the cells of a sheet of sales say about columns whose headings say too little: a price that holds the money of the
 * whole row, a number nobody named that counts what was sold, a size that belongs to the name.
 *
 * @param layout with the columns as they are to be read
 * @param refusal why the sheet cannot be read; empty where it can
 */
record SalesColumns(Layout layout, String refusal) {
    private static final int MOST_ROWS = 20_000;
    private static final BigDecimal MOST_SOLD = BigDecimal.valueOf(99_999);

    static SalesColumns of(Sheet sheet, Layout found, MonthContext context, ProblemLog log) {
        Layout layout = withVoids(withVariants(sheet, found, log), log);
        MenuPrices menu = new MenuPrices(context);
        if (!layout.has(Field.QUANTITY)) {
            return new SalesColumns(layout, new UnnamedQuantity(layout, menu).refusal(sheet));
        }
        if (layout.has(Field.UNIT_PRICE) && !layout.hasAny(Field.GROSS, Field.NET) && !isMapped(layout, context)) {
            return withLineTotals(sheet, layout, menu, log);
        }
        return new SalesColumns(layout, "");
    }

    private static boolean isMapped(Layout layout, MonthContext context) {
        String heading = TextFold.fold(layout.column(Field.UNIT_PRICE).heading());
        for (ColumnRule rule : context.rules(layout.sheet().file())) {
            if (TextFold.fold(rule.heading()).equals(heading)) {
                return true;
            }
        }
        return false;
    }

    /** A column of sizes or modifiers belongs to the name where it tells rows apart that nothing else does. */
    private static Layout withVariants(Sheet sheet, Layout layout, ProblemLog log) {
        if (!layout.has(Field.VARIANT)) {
            return layout;
        }
        Fields fields = new Fields(layout);
        Set<String> words = new HashSet<>();
        Map<String, String> byCode = new HashMap<>();
        boolean[] codesTell = {layout.has(Field.CODE)};
        each(sheet, layout, row -> {
            fields.load(row);
            String word = TextFold.fold(fields.text(Field.VARIANT));
            if (fields.has(Field.ITEM) || fields.has(Field.CODE)) {
                words.add(word);
                String code = fields.text(Field.CODE);
                String before = code.isEmpty() ? null : byCode.putIfAbsent(code, word);
                codesTell[0] &= !code.isEmpty() && (before == null || before.equals(word));
            }
        });
        if (words.size() > 1 && !codesTell[0] && layout.has(Field.ITEM)) {
            log.notice(
                    ProblemKind.VALUE_DOUBTFUL,
                    layout.column(Field.VARIANT),
                    "",
                    "The words of this column belong to the names of the items, as in \"Item Size\".",
                    "Give names that are not known a row in the sheet Names of the book.");
            return layout;
        }
        return moved(layout, Field.VARIANT, null);
    }

    /** Voids are taken off the quantity where the money of the row is without them too. */
    private static Layout withVoids(Layout layout, ProblemLog log) {
        if (!layout.has(Field.VOID_QUANTITY)) {
            return layout;
        }
        boolean known = layout.has(Field.QUANTITY) && layout.has(Field.NET);
        log.notice(
                ProblemKind.VALUE_DOUBTFUL,
                layout.column(Field.VOID_QUANTITY),
                "",
                known
                        ? "What this column says was voided is taken off the quantity."
                        : "This column of voids is not used: without a column of net money it is not known whether the money"
                                + " is without them.",
                known
                        ? "Export it without the column if the quantity is without voids already."
                        : "Export it with a column of net money.");
        return known ? layout : moved(layout, Field.VOID_QUANTITY, null);
    }

    /** Whether the prices are the money of whole rows, by the book's menu prices. */
    private static SalesColumns withLineTotals(Sheet sheet, Layout layout, MenuPrices menu, ProblemLog log) {
        Fields fields = new Fields(layout);
        int[] fits = {0, 0};
        each(sheet, layout, row -> {
            fields.load(row);
            BigDecimal price = menu.find(fields.text(Field.ITEM), fields.text(Field.CODE));
            BigDecimal quantity = number(fields.find(Field.QUANTITY));
            BigDecimal money = number(fields.find(Field.UNIT_PRICE));
            if (price != null
                    && quantity != null
                    && money != null
                    && quantity.abs().compareTo(BigDecimal.ONE) > 0) {
                fits[0] += MenuPrices.isNear(money, price, BigDecimal.ONE) ? 1 : 0;
                fits[1] += MenuPrices.isNear(money, price, quantity) ? 1 : 0;
            }
        });
        String heading = layout.column(Field.UNIT_PRICE).heading();
        if (fits[1] > fits[0] && fits[0] > 0) {
            return new SalesColumns(
                    layout,
                    "By the book's menu prices, \"" + heading + "\" is the price of one in some rows and the money of"
                            + " the whole row in others; map it in the sheet Columns of the book.");
        }
        if (fits[1] == 0 || fits[0] > 0) {
            return new SalesColumns(layout, "");
        }
        log.notice(
                ProblemKind.VALUE_AMBIGUOUS,
                layout.column(Field.UNIT_PRICE),
                "",
                "By the book's menu prices this column is the money of the whole row, not the price of one; it was read"
                        + " so.",
                "If this is not right, map the heading to Unit price in the sheet Columns of the book.");
        return new SalesColumns(moved(layout, Field.UNIT_PRICE, Field.GROSS), "");
    }

    private static Layout moved(Layout layout, Field from, @Nullable Field to) {
        Map<Field, Integer> columns = new EnumMap<>(layout.columns());
        Integer column = columns.remove(from);
        if (to != null && column != null) {
            columns.put(to, column);
        }
        return new Layout(
                layout.sheet(),
                layout.headingRow(),
                Map.copyOf(columns),
                layout.headings(),
                layout.signatures(),
                layout.above(),
                layout.width());
    }

    private interface EachRow {
        void take(Row row);
    }

    private static void each(Sheet sheet, Layout layout, EachRow take) {
        int[] rows = {0};
        sheet.read(row -> {
            if (row.number() > layout.headingRow() && !row.isBlank() && !layout.isHeading(row)) {
                take.take(row);
                rows[0]++;
            }
            return rows[0] < MOST_ROWS;
        });
    }

    /** The number of a cell where one can be read without knowing the column; null where not. */
    private static @Nullable BigDecimal number(@Nullable Cell cell) {
        if (cell == null || cell.number() != null) {
            return cell == null ? null : cell.number();
        }
        return switch (NumberText.readings(cell.text())) {
            case SAME, POINT_ONLY -> NumberText.parse(cell.text(), Decimals.POINT);
            case COMMA_ONLY -> NumberText.parse(cell.text(), Decimals.COMMA);
            default -> null;
        };
    }

    /** Looks for a column that counts what was sold under a heading that says nothing. */
    private static final class UnnamedQuantity {
        private final Layout layout;
        private final MenuPrices menu;
        private final Fields fields;
        private final Map<Integer, Candidate> candidates = new HashMap<>();
        private final Set<String> items = new HashSet<>();
        private int rows;

        private static final class Candidate {
            private int filled;
            private boolean whole = true;
            private boolean counts;
            private int near;
            private int alone;
        }

        UnnamedQuantity(Layout layout, MenuPrices menu) {
            this.layout = layout;
            this.menu = menu;
            this.fields = new Fields(layout);
            layout.headings().keySet().stream()
                    .filter(column -> !layout.columns().containsValue(column))
                    .forEach(column -> candidates.put(column, new Candidate()));
        }

        /** Empty where each row may well be one serve. */
        String refusal(Sheet sheet) {
            if (candidates.isEmpty()) {
                return "";
            }
            each(sheet, layout, this::see);
            List<String> headings = new ArrayList<>();
            boolean summed = rows > 1 && items.size() == rows && !layout.hasAny(Field.TICKET, Field.TIME, Field.DATE);
            candidates.forEach((column, candidate) -> {
                boolean mostly = candidate.whole && candidate.counts && candidate.filled * 2 > rows;
                boolean fits = candidate.near > candidate.alone;
                if (mostly && (summed || fits)) {
                    headings.add("\"" + layout.headings().get(column) + "\"");
                }
            });
            headings.sort(null);
            return headings.isEmpty()
                    ? ""
                    : "No heading names the quantity, but " + String.join(" or ", headings)
                            + " may be it; map it to Quantity in the sheet Columns of the book.";
        }

        private void see(Row row) {
            fields.load(row);
            String item = fields.text(Field.ITEM);
            String code = fields.text(Field.CODE);
            if ((item.isEmpty() && code.isEmpty()) || row.cells().size() < 2 || RowWords.is("total", item)) {
                return;
            }
            rows++;
            items.add(item + "\n" + code);
            BigDecimal price = menu.find(item, code);
            BigDecimal money = number(fields.find(layout.has(Field.GROSS) ? Field.GROSS : Field.NET));
            for (Cell cell : row.cells()) {
                Candidate candidate = candidates.get(cell.column());
                if (candidate != null) {
                    see(candidate, cell, price, money);
                }
            }
        }

        private static void see(
                Candidate candidate, Cell cell, @Nullable BigDecimal price, @Nullable BigDecimal money) {
            BigDecimal count = number(cell);
            candidate.filled++;
            candidate.whole &= count != null
                    && cell.moment() == null
                    && count.stripTrailingZeros().scale() <= 0
                    && count.abs().compareTo(MOST_SOLD) <= 0;
            if (count == null || count.abs().compareTo(BigDecimal.ONE) <= 0) {
                return;
            }
            candidate.counts = true;
            if (price != null && money != null) {
                candidate.near += MenuPrices.isNear(money, price, count) ? 1 : 0;
                candidate.alone += MenuPrices.isNear(money, price, BigDecimal.ONE) ? 1 : 0;
            }
        }
    }
}
