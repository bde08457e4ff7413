package heeltap.load;

import heeltap.source.Cell;
import heeltap.source.Row;
import heeltap.source.Sheet;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a sheet's own sums say about the decimals of numbers that can be read two ways: quantity times price is the
 * money of a row, and rows add up to the totals printed below or above them. Only sums that are right under one
 * style and wrong under the other count, and only where all of them agree.
 */
final class StyleWitness {
    private static final int MOST_ROWS = 5000;
    private static final BigDecimal CENT = new BigDecimal("0.01");

    private final Fields fields;
    private final @Nullable Field money;
    private final int[] products = new int[Decimals.values().length];
    private final int[] totals = new int[Decimals.values().length];
    private final BigDecimal[] all = {BigDecimal.ZERO, BigDecimal.ZERO};
    private final BigDecimal[] since = {BigDecimal.ZERO, BigDecimal.ZERO};
    private int rows;

    /**
     * What the sums say.
     *
     * @param why as the end of a sentence
     */
    record Verdict(Decimals style, String why) {}

    private StyleWitness(Layout layout) {
        this.fields = new Fields(layout);
        this.money = List.of(Field.GROSS, Field.LINE_TOTAL, Field.NET, Field.COUNT, Field.AMOUNT).stream()
                .filter(layout::has)
                .findFirst()
                .orElse(null);
    }

    /** What the sheet's sums say; null where they say nothing or contradict each other. */
    static @Nullable Verdict find(Sheet sheet, Layout layout) {
        StyleWitness witness = new StyleWitness(layout);
        if (witness.money == null) {
            return null;
        }
        sheet.read(row -> {
            if (row.number() > layout.headingRow() && !row.isBlank() && !layout.isHeading(row)) {
                witness.see(row, witness.money);
            }
            return witness.rows < MOST_ROWS;
        });
        layout.above().forEach(witness::seeAbove);
        Decimals style = only(witness.products);
        if (style != null) {
            return new Verdict(style, "as quantity times unit price says");
        }
        style = only(witness.totals);
        return style == null ? null : new Verdict(style, "as the printed total says");
    }

    /** What the book's menu prices say: the money of a row is near its quantity times the price of its item. */
    static @Nullable Verdict byMenu(Sheet sheet, Layout layout, MenuPrices menu) {
        Field money = layout.has(Field.GROSS) ? Field.GROSS : layout.has(Field.NET) ? Field.NET : Field.UNIT_PRICE;
        Fields fields = new Fields(layout);
        int[] votes = new int[Decimals.values().length];
        sheet.read(row -> {
            fields.load(row);
            Cell cell = row.number() > layout.headingRow() ? fields.find(money) : null;
            BigDecimal price = menu.find(fields.text(Field.ITEM), fields.text(Field.CODE));
            if (cell != null && price != null) {
                vote(
                        votes,
                        isNear(fields, cell, money, price, Decimals.POINT),
                        isNear(fields, cell, money, price, Decimals.COMMA));
            }
            return row.number() < MOST_ROWS;
        });
        Decimals style = only(votes);
        return style == null ? null : new Verdict(style, "as the book's menu prices say");
    }

    private static boolean isNear(Fields fields, Cell cell, Field money, BigDecimal price, Decimals style) {
        Cell counted = money == Field.UNIT_PRICE ? null : fields.find(Field.QUANTITY);
        BigDecimal quantity = counted == null ? BigDecimal.ONE : value(counted, style);
        BigDecimal value = value(cell, style);
        return value != null && quantity != null && MenuPrices.isNear(value, price, quantity);
    }

    private static @Nullable Decimals only(int[] votes) {
        int point = votes[at(Decimals.POINT)];
        int comma = votes[at(Decimals.COMMA)];
        return point > 0 && comma == 0 ? Decimals.POINT : comma > 0 && point == 0 ? Decimals.COMMA : null;
    }

    private static int at(Decimals style) {
        return style == Decimals.POINT ? 0 : 1;
    }

    private void see(Row row, Field field) {
        rows++;
        fields.load(row);
        Cell cell = fields.find(field);
        if (cell == null) {
            return;
        }
        if (isTotal(row)) {
            vote(totals, isSum(cell, Decimals.POINT), isSum(cell, Decimals.COMMA));
            java.util.Arrays.fill(since, BigDecimal.ZERO);
            return;
        }
        vote(products, isProduct(cell, Decimals.POINT), isProduct(cell, Decimals.COMMA));
        for (Decimals style : Decimals.values()) {
            BigDecimal value = value(cell, style);
            if (value != null) {
                all[at(style)] = all[at(style)].add(value);
                since[at(style)] = since[at(style)].add(value);
            }
        }
    }

    /** An invoice's total may stand above its lines. */
    private void seeAbove(Row row) {
        for (int i = 0; i + 1 < row.cells().size(); i++) {
            if (RowWords.is("label total", row.cells().get(i).text())) {
                Cell cell = row.cells().get(i + 1);
                vote(totals, isSum(cell, Decimals.POINT), isSum(cell, Decimals.COMMA));
            }
        }
    }

    private static void vote(int[] votes, boolean point, boolean comma) {
        votes[at(Decimals.POINT)] += point && !comma ? 1 : 0;
        votes[at(Decimals.COMMA)] += comma && !point ? 1 : 0;
    }

    private static boolean isTotal(Row row) {
        for (Cell cell : row.cells()) {
            if (cell.number() == null && NumberText.readings(cell.text()) == NumberText.Readings.NONE) {
                String label = TextFold.fold(cell.text());
                String first = label.substring(0, Math.max(0, label.indexOf(' ')));
                return List.of("total", "subtotal", "row total", "row subtotal").stream()
                        .anyMatch(list -> RowWords.isFolded(list, label) || RowWords.isFolded(list, first));
            }
        }
        return true;
    }

    private boolean isSum(Cell cell, Decimals style) {
        BigDecimal value = value(cell, style);
        return value != null
                && value.signum() != 0
                && (isClose(value, all[at(style)]) || isClose(value, since[at(style)]));
    }

    private boolean isProduct(Cell cell, Decimals style) {
        Cell price = fields.find(Field.UNIT_PRICE);
        Cell quantity = fields.find(Field.QUANTITY);
        BigDecimal total = value(cell, style);
        BigDecimal each = price == null ? null : value(price, style);
        BigDecimal count = quantity == null ? null : value(quantity, style);
        return total != null && each != null && count != null && isClose(total, each.multiply(count));
    }

    private static boolean isClose(BigDecimal a, BigDecimal b) {
        return a.abs().subtract(b.abs()).abs().compareTo(CENT) < 0;
    }

    private static @Nullable BigDecimal value(Cell cell, Decimals style) {
        return cell.number() != null ? cell.number() : NumberText.parse(cell.text(), style);
    }
}
