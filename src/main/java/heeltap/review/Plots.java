package heeltap.review;

import heeltap.document.Block;
import heeltap.document.Format;
import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Cut;
import heeltap.document.ScatterChart.Kind;
import heeltap.document.ScatterChart.Point;
import heeltap.menu.ClassedDrink;
import heeltap.menu.CostClass;
import heeltap.menu.MarginClass;
import heeltap.menu.MenuThresholds;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Cost percent and margin of every drink against its popularity, a plot of each for every group. */
final class Plots {
    private static final Exact SURE = Exact.of(80);

    /** Plots of no more drinks are readable at half a page's width. */
    private static final int SMALL = 25;

    private Plots() {}

    /** The groups with drinks that can be plotted, in the order of first mention. */
    static Map<String, List<DrinkRow>> groups(List<DrinkRow> rows) {
        Map<String, List<DrinkRow>> groups = new LinkedHashMap<>();
        rows.stream()
                .filter(DrinkRow::included)
                .filter(row -> row.classed().popularity().isPresent())
                .forEach(row -> groups.computeIfAbsent(row.group(), name -> new ArrayList<>())
                        .add(row));
        return groups;
    }

    /** Both plots of each group: side by side where they are small, else one after the other. */
    static List<Block> blocks(List<DrinkRow> drinks, Words words) {
        List<Block> blocks = new ArrayList<>();
        groups(drinks).forEach((group, rows) -> {
            ScatterChart cost = cost(group, rows, words);
            ScatterChart margin = margin(group, rows, words);
            if (rows.size() <= SMALL) {
                blocks.add(new Block.Beside(50, List.of(cost), List.of(margin)));
            } else {
                blocks.add(cost);
                blocks.add(margin);
            }
        });
        return blocks;
    }

    static ScatterChart cost(String group, List<DrinkRow> rows, Words words) {
        MenuThresholds cuts = rows.get(0).menu().thresholds();
        return new ScatterChart(
                id(group) + "-cost",
                words.say("plot.cost.title", group),
                words.say("plot.cost.note"),
                words.say("plot.popularity"),
                words.say("plot.cost.axis"),
                Format.PERCENT,
                Format.PERCENT,
                points(
                        rows,
                        DrinkRow::costPercent,
                        row -> kind(row.classed().classes().costClass(), words)),
                List.of(new Cut(
                        cuts.equalSharePercent(),
                        words.say("plot.equal-share", words.percent(cuts.equalSharePercent())))),
                cuts.costPercent().map(cut -> new Cut(cut, words.say("plot.cost-cut", words.percent(cut)))).stream()
                        .toList(),
                List.of(
                        words.say("plot.cost.upper-left"),
                        words.say("plot.cost.upper-right"),
                        words.say("plot.cost.lower-left"),
                        words.say("plot.cost.lower-right")),
                "drinks.popularity_percent",
                "drinks.cost_percent",
                "drinks.drink");
    }

    static ScatterChart margin(String group, List<DrinkRow> rows, Words words) {
        MenuThresholds cuts = rows.get(0).menu().thresholds();
        Exact rule =
                cuts.popularityPercent().dividedBy(cuts.equalSharePercent()).times(Exact.HUNDRED);
        return new ScatterChart(
                id(group) + "-margin",
                words.say("plot.margin.title", group),
                words.say("plot.margin.note", words.figures().percent(rule, rule.isWhole() ? 0 : 1)),
                words.say("plot.popularity"),
                words.say("plot.margin.axis"),
                Format.PERCENT,
                Format.UNIT_MONEY,
                points(
                        rows,
                        row -> row.margin().map(Money::amount),
                        row -> kind(row.classed().classes().marginClass(), words)),
                List.of(new Cut(
                        cuts.popularityPercent(),
                        words.say("plot.popular-from", words.percent(cuts.popularityPercent())))),
                cuts.margin().map(cut -> new Cut(cut.amount(), words.say("plot.margin-cut", words.money(cut)))).stream()
                        .toList(),
                List.of(
                        words.say("class.puzzle"),
                        words.say("class.star"),
                        words.say("class.dog"),
                        words.say("class.plowhorse")),
                "drinks.popularity_percent",
                "drinks.margin",
                "drinks.drink");
    }

    private static List<Point> points(
            List<DrinkRow> rows, Function<DrinkRow, Optional<Exact>> y, Function<DrinkRow, Kind> kind) {
        List<Point> points = new ArrayList<>();
        for (DrinkRow row : rows) {
            Optional<Exact> popularity = row.classed().popularity().map(ClassedDrink.Popularity::percent);
            Optional<Exact> height = y.apply(row);
            if (popularity.isPresent() && height.isPresent()) {
                points.add(new Point(
                        row.name(),
                        popularity.get(),
                        height.get(),
                        kind.apply(row),
                        row.classed()
                                .totalMargin()
                                .map(Money::amount)
                                .orElse(Exact.ZERO)
                                .max(Exact.ZERO),
                        row.certaintyPercent()
                                .map(percent -> percent.compareTo(SURE) >= 0)
                                .orElse(true)));
            }
        }
        return points;
    }

    /** The classes in the order of their marks, the best first. */
    private static final List<Enum<?>> MARKS = List.of(
            MarginClass.STAR,
            MarginClass.PLOWHORSE,
            MarginClass.PUZZLE,
            MarginClass.DOG,
            CostClass.WINNER,
            CostClass.MARGINAL,
            CostClass.LOSER);

    private static <E extends Enum<E>> Kind kind(Optional<E> value, Words words) {
        return value.map(word -> new Kind(
                        MARKS.indexOf(word) % 4,
                        words.say("class." + word.name().toLowerCase(Locale.ROOT))))
                .orElseGet(() -> new Kind(7, words.say("class.none")));
    }

    private static String id(String group) {
        // letters of any script, so that two groups never share a name
        return heeltap.record.Folding.fold(group).replace(' ', '-');
    }
}
