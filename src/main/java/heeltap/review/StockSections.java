package heeltap.review;

import heeltap.document.BarChart;
import heeltap.document.Block;
import heeltap.document.CellValue;
import heeltap.document.Format;
import heeltap.document.Table;
import heeltap.record.Setting;
import heeltap.review.LedgerTables.Chain;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The pages on purchases, orders, changes and the ledger. */
final class StockSections {
    private StockSections() {}

    /** What was written down as lost, what lies too long and what to order. */
    static List<Block> advice(ReviewFigures review, Tables tables, Words words) {
        List<Block> blocks = new ArrayList<>();
        if (!tables.losses().rows().isEmpty()) {
            blocks.add(view(tables.losses(), "ingredient measure reason amount cost share_percent"));
        }
        List<String> slow = review.advice().values().stream()
                .filter(StockAdvice::isSlow)
                .sorted(Comparator.comparing(StockAdvice::closingValue, Comparator.reverseOrder()))
                .map(line -> line.line()
                        .daysOnHand()
                        .map(days -> words.say(
                                "stock.slow-line",
                                line.ingredient().name(),
                                words.money(line.closingValue()),
                                words.wholeDays(days)))
                        .orElseGet(() -> words.say(
                                "stock.unused-line", line.ingredient().name(), words.money(line.closingValue()))))
                .toList();
        if (!slow.isEmpty()) {
            blocks.add(new Block.Heading(
                    words.say("stock.slow", words.count(review.book().settings().get(Setting.SLOW_STOCK_DAYS)))));
            blocks.add(new Block.Points(slow));
        }
        if (!tables.orders().rows().isEmpty()) {
            blocks.add(heading("table.orders.title", words));
            blocks.add(new Block.Paragraph(
                    words.say("orders.read", words.month(review.now().month().plusMonths(1)))));
            blocks.add(view(
                    tables.orders(),
                    "ingredient measure par on_hand expected_use wanted pack packs supplier unit_cost order_cost"));
        }
        return blocks;
    }

    static List<Block> invoices(Tables tables, Words words) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                view(
                        tables.invoices(),
                        "supplier invoice date lines goods discount delivery deposit tax total printed_total difference finding"));
        blocks.add(heading("table.purchases.title", words));
        blocks.add(view(tables.purchases(), "supplier group lines goods delivery cost share_percent"));
        if (!tables.deposits().rows().isEmpty()) {
            blocks.add(heading("table.deposits.title", words));
            blocks.add(view(tables.deposits(), "supplier opening_balance paid returned balance"));
        }
        return blocks;
    }

    /** From each earlier month its figures, what moved the margin, and the steps that are not nothing. */
    static List<Block> changes(ReviewFigures review, Tables tables, Words words) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(words.say("changes.read")));
        review.chains().stream().map(Chain::fromMonth).distinct().forEach(from -> {
            List<Chain> chains = review.chains().stream()
                    .filter(chain -> chain.fromMonth().equals(from))
                    .toList();
            blocks.add(new Block.Heading(words.say(
                    "changes.since", words.month(from), words.month(review.now().month()))));
            blocks.add(new Block.Beside(
                    50,
                    List.of(new Block.Points(chains.stream()
                            .map(chain -> words.say(
                                    "changes.figures." + chain.measure().replace(' ', '-'),
                                    words.money(chain.from()),
                                    words.money(chain.to()),
                                    words.signedMoney(chain.to().minus(chain.from()))))
                            .toList())),
                    List.of(marginSteps(chains, words))));
            blocks.add(heading("changes.steps", words));
            Table steps = tables.changes();
            int month = steps.indexOf("from");
            int amount = steps.indexOf("amount");
            blocks.add(
                    view(
                            steps.where(row -> row.cells().get(month) instanceof CellValue.Term term
                                    && term.published().equals(from.toString())
                                    && row.cells().get(amount) instanceof CellValue.Sum sum
                                    && !sum.money().isZero()),
                            "measure effect amount largest_drink largest_drink_amount largest_ingredient largest_ingredient_amount"));
        });
        return blocks;
    }

    private static Block marginSteps(List<Chain> chains, Words words) {
        Chain margin = chains.get(chains.size() - 1);
        List<BarChart.Bar> bars = new ArrayList<>();
        for (int i = 0; i < margin.steps().size(); i++) {
            if (!margin.printed().get(i).isZero()) {
                bars.add(new BarChart.Bar(
                        LedgerTables.effect(margin.steps().get(i), words),
                        margin.printed().get(i).amount()));
            }
        }
        return new BarChart(
                "margin-steps-" + margin.fromMonth(),
                words.say("margin-steps.heading", words.month(margin.fromMonth())),
                words.say("column.margin_effect"),
                Format.MONEY,
                bars);
    }

    /** The journal, and the sums that must agree behind it. */
    static List<Block> ledger(ReviewFigures review, Tables tables, Words words) {
        List<String> ties = Controls.of(review, words).stream()
                .map(control -> words.say(
                        control.holds() ? "ledger.holds" : "ledger.differs",
                        words.term("control", control.name()).said(),
                        control.scope().said(),
                        control.print(control.difference(), words)))
                .toList();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(words.say("ledger.read")));
        blocks.add(view(tables.journal(), "account debit credit memo"));
        blocks.add(heading("ledger.ties", words));
        blocks.add(new Block.Points(ties));
        blocks.add(new Block.Caution(words.say("caution.books")));
        return blocks;
    }

    private static Block heading(String key, Words words) {
        return new Block.Heading(words.say(key));
    }

    private static Block.TableView view(Table table, String keys) {
        return new Block.TableView(table, List.of(keys.split(" ", -1)));
    }
}
