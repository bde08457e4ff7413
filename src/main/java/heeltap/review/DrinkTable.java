package heeltap.review;

import heeltap.document.CellValue;
import heeltap.document.Table;
import heeltap.document.TableRow.Emphasis;
import heeltap.menu.ClassedDrink;
import heeltap.menu.MarginClass;
import heeltap.menu.MenuThresholds;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Settings;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The table of drinks. */
final class DrinkTable {
    private final Settings settings;
    private final Words words;

    private DrinkTable(Settings settings, Words words) {
        this.settings = settings;
        this.words = words;
    }

    static Table of(List<DrinkRow> rows, Settings settings, Words words) {
        DrinkTable drinks = new DrinkTable(settings, words);
        Filling table = Shapes.DRINKS
                .fill(words.texts())
                .formula(
                        "cost_percent",
                        "IF(OR({cost}=\"\",{net_price}=\"\"),\"\",IF({net_price}=0,\"\",{cost}/{net_price}*100))")
                .formula("mix_percent", TableShape.share("sold", "group"))
                .formula("margin", "IF(OR({cost}=\"\",{net_price}=\"\"),\"\",{net_price}-{cost})")
                .formula("total_margin", "IF({margin}=\"\",\"\",{margin}*{sold})")
                .totalFormula("sold", "SUM({sold:all})")
                .totalFormula("complimentary", "SUM({complimentary:all})")
                .totalFormula("net_sales", "SUM({net_sales:all})")
                .totalFormula("total_margin", "SUM({total_margin:all})");
        Exact sold = Exact.ZERO;
        Exact given = Exact.ZERO;
        Money netSales = Money.ZERO;
        Money totalMargin = Money.ZERO;
        for (DrinkRow row : rows) {
            table.add(row.included() ? Emphasis.PLAIN : Emphasis.FAINT, drinks.cells(row));
            sold = sold.plus(row.sales().sold());
            given = given.plus(row.sales().complimentary());
            netSales = netSales.plus(row.sales().netSales());
            totalMargin = totalMargin.plus(row.totalMargin().orElse(Money.ZERO));
        }
        return table.total(new Cells()
                        .set("drink", CellValue.of(words.say("word.total")))
                        .set("sold", CellValue.of(sold))
                        .set("complimentary", CellValue.of(given))
                        .set("net_sales", CellValue.of(netSales))
                        .set("total_margin", CellValue.of(totalMargin)))
                .done();
    }

    private Cells cells(DrinkRow row) {
        Cells cells = new Cells();
        figures(row, cells);
        classes(row, cells);
        glass(row, cells);
        cells.set("cautions", CellValue.of(String.join(" ", Cautions.of(row.cost(), words))));
        return cells;
    }

    private static void figures(DrinkRow row, Cells cells) {
        cells.set("drink", CellValue.of(row.name()))
                .set("category", CellValue.of(row.drink().category()))
                .set("group", CellValue.of(row.group()))
                .set("sold", CellValue.of(row.sales().sold()))
                .set("complimentary", CellValue.of(row.sales().complimentary()))
                .set("net_sales", CellValue.of(row.sales().netSales()))
                .set("net_price", money(row.netPrice()))
                .set("menu_price", money(row.menuPrice()))
                .set("cost", money(row.cost().cost()))
                .set("labour", CellValue.of(row.cost().labour()))
                .set("cost_percent", number(row.costPercent()))
                .set("margin", money(row.margin()))
                .set("total_margin", money(row.totalMargin()))
                .set("days_on_menu", CellValue.of(row.daysOnMenu()))
                .set("allergens", CellValue.of(String.join("; ", row.cost().allergens())))
                .set("included", CellValue.of(row.included()))
                .set("note", CellValue.of(row.note()));
    }

    private void classes(DrinkRow row, Cells cells) {
        ClassedDrink classed = row.classed();
        ClassedDrink.Classes classes = classed.classes();
        MenuThresholds cuts = row.menu().thresholds();
        cells.set("certainty_percent", number(row.certaintyPercent()))
                .set("margin_after_labour", money(classed.marginAfterLabour()))
                .set("margin_class_after_labour", word(classes.marginClassAfterLabour()));
        if (!row.classed().item().inAnalysis() || row.daysOnMenu() == 0) {
            return;
        }
        cells.set("mix_percent", number(classed.popularity().map(ClassedDrink.Popularity::mixPercent)))
                .set("popularity_percent", number(classed.popularity().map(ClassedDrink.Popularity::percent)))
                .set("popularity_threshold_percent", CellValue.of(cuts.popularityPercent()))
                .set("margin_threshold", money(cuts.margin()))
                .set("cost_threshold_percent", number(cuts.costPercent()))
                .set("total_margin_threshold", money(cuts.totalMargin()))
                .set("popular", yes(classes.popular()))
                .set("profitable", yes(classes.profitable()))
                .set("margin_class", word(classes.marginClass()))
                .set("cost_class", word(classes.costClass()))
                .set("cost_margin_class", word(classes.costMarginClass()))
                .set("goal_value", money(classed.goalValue()))
                .set("goal_standard", money(cuts.goalStandard()));
        classes.marginClass()
                .ifPresent(one -> cells.set("on_the_line", CellValue.of(row.isOnTheLine()))
                        .set("class_hangs_on_rule", CellValue.of(classed.hangsOnPopularityRule()))
                        .set("methods_disagree", CellValue.of(classes.disagree()))
                        .set("advice", CellValue.of(advice(row, one))));
    }

    /** What the class asks for; where it is not sure enough, to wait. */
    private String advice(DrinkRow row, MarginClass marginClass) {
        return words.say(row.isSure() ? "advice." + marginClass.name().toLowerCase(Locale.ROOT) : "advice.on-the-line");
    }

    /** Physical figures; a bought-in drink without a spec has none. */
    private void glass(DrinkRow row, Cells cells) {
        Map<String, Exact> figures = Served.figures(row.cost(), settings);
        figures.forEach((key, figure) -> cells.set(key, CellValue.of(figure)));
        cells.set(
                "water_from",
                Served.waterFrom(row.cost())
                        .<CellValue>map(from -> words.term("water-from", from))
                        .orElse(CellValue.BLANK));
        if (!figures.isEmpty()) {
            cells.set(
                    "volume_estimated", CellValue.of(row.cost().glass().served().estimated()));
        }
    }

    static CellValue physical(double figure) {
        return CellValue.of(Exact.ofPhysical(figure));
    }

    static CellValue money(Optional<Money> money) {
        return CellValue.of(money.orElse(null));
    }

    static CellValue number(Optional<Exact> number) {
        return CellValue.of(number.orElse(null));
    }

    private static CellValue yes(Optional<Boolean> yes) {
        return yes.map(CellValue::of).orElse(CellValue.BLANK);
    }

    /** The contract's word of a class. */
    private static <E extends Enum<E>> CellValue word(Optional<E> value) {
        return CellValue.of(
                value.map(word -> word.name().toLowerCase(Locale.ROOT)).orElse(""));
    }
}
