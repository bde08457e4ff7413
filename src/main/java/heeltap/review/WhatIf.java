package heeltap.review;

import static heeltap.review.DrinkTable.physical;

import heeltap.document.Block;
import heeltap.document.CellValue;
import heeltap.document.Column.Input;
import heeltap.document.Table;
import heeltap.pricing.EarningSuggestion;
import heeltap.pricing.GroupDemand;
import heeltap.pricing.GroupSuggestion;
import heeltap.pricing.PriceResponse;
import heeltap.quantity.Exact;
import heeltap.record.Setting;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The sheet of the workbook on which other prices and another group elasticity are typed to see what follows. */
final class WhatIf {
    static final TableShape GROUPS = TableShape.of(
            "what_if_groups",
            "group",
            "number:COUNT",
            "elasticity_now:AMOUNT",
            "elasticity_typed:AMOUNT",
            "within_now:AMOUNT",
            "within:AMOUNT",
            "follow:AMOUNT",
            "order_share:AMOUNT",
            "usual_price:UNIT_MONEY",
            "power:AMOUNT",
            "popular_from_percent:PERCENT",
            "equal_share_percent:PERCENT");
    static final TableShape DRINKS = TableShape.of(
            "what_if",
            "drink",
            "price_now:UNIT_MONEY",
            "price_typed:UNIT_MONEY",
            "price_suggested:UNIT_MONEY",
            "cost_percent:PERCENT",
            "margin:UNIT_MONEY",
            "units:AMOUNT",
            "units_percent:PERCENT",
            "total_margin:MONEY",
            "margin_change:MONEY",
            "popularity_percent:PERCENT",
            "margin_class",
            "group",
            "group_number:COUNT",
            "in_analysis:COUNT",
            "units_now:AMOUNT",
            "net_now:UNIT_MONEY",
            "cost:UNIT_MONEY",
            "price_used:UNIT_MONEY",
            "net_price:UNIT_MONEY",
            "pull:AMOUNT",
            "sales:MONEY",
            "units_cost:MONEY",
            "total_margin_now:MONEY");
    static final TableShape TOTALS = TableShape.of(
            "what_if_totals",
            "group",
            "number:COUNT",
            "units_now:AMOUNT",
            "units:AMOUNT",
            "net_sales:MONEY",
            "cost_percent:PERCENT",
            "margin_now:MONEY",
            "total_margin:MONEY",
            "margin_change:MONEY",
            "margin_cut:UNIT_MONEY",
            "cost_cut_percent:PERCENT");

    private final Words words;
    private final List<WhatIfGroup> groups;

    private WhatIf(List<WhatIfGroup> groups, Words words) {
        this.groups = groups;
        this.words = words;
    }

    /** The sheet's blocks; none where demand covers no drink that sells. */
    static List<Block> blocks(ReviewFigures review, Words words) {
        WhatIf sheet = new WhatIf(groups(review), words);
        return sheet.groups.isEmpty() ? List.of() : sheet.blocks();
    }

    private static List<WhatIfGroup> groups(ReviewFigures review) {
        Map<String, DrinkRow> rows = new HashMap<>();
        review.rows().forEach(row -> rows.put(row.name(), row));
        double rule = review.book()
                .settings()
                .get(Setting.POPULARITY_RULE_PERCENT)
                .percent()
                .toDouble();
        List<WhatIfGroup> groups = new ArrayList<>();
        for (GroupSuggestion group : review.prices().groups()) {
            Optional<GroupDemand> demand = group.model().filter(model -> model.groupElasticity() < 0);
            if (demand.isPresent()) {
                groups.add(group(group, demand.get(), rows, rule));
            }
        }
        return groups;
    }

    private static WhatIfGroup group(
            GroupSuggestion group, GroupDemand demand, Map<String, DrinkRow> rows, double rule) {
        List<EarningSuggestion> drinks = group.modelled().stream()
                .map(name -> group.drinks().stream()
                        .filter(drink -> drink.price().drink().drink().equals(name))
                        .findFirst()
                        .orElseThrow())
                .toList();
        boolean[] analysed = new boolean[drinks.size()];
        double[] prices = new double[drinks.size()];
        for (int j = 0; j < prices.length; j++) {
            analysed[j] = Optional.ofNullable(rows.get(group.modelled().get(j)))
                    .filter(DrinkRow::included)
                    .isPresent();
            prices[j] = drinks.get(j).price().suggested().orElseThrow().amount().toDouble();
        }
        long listed = group.drinks().stream()
                .map(drink -> rows.get(drink.price().drink().drink()))
                .filter(row -> row != null && row.classed().item().inAnalysis())
                .count();
        double equal = 100.0 / Math.max(1, listed);
        return new WhatIfGroup(group, demand, drinks, analysed, equal * rule, equal, demand.unitsAt(prices));
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(words.say("what-if.read")));
        blocks.add(new Block.Caution(words.say("caution.prices")));
        for (Table table : List.of(groupTable(), drinkTable(), totalTable())) {
            List<String> keys =
                    table.columns().stream().map(column -> column.key()).toList();
            int shown = table.name().equals(DRINKS.name()) ? keys.indexOf("margin_class") + 1 : keys.size();
            blocks.add(new Block.TableView(table, keys.subList(0, shown)));
        }
        for (int g = 0; g < groups.size(); g++) {
            if (groups.get(g).isAnalysed()) {
                blocks.addAll(WhatIfPlots.of(groups.get(g), g, words));
            }
        }
        return blocks;
    }

    private Table groupTable() {
        Filling table = GROUPS.fill(words.texts())
                .input("elasticity_typed", Input.BELOW_ZERO)
                .formula(
                        "within",
                        "{within_now}*IF(ISNUMBER({elasticity_typed}),IF({elasticity_typed}<0,{elasticity_typed},{elasticity_now}),{elasticity_now})/{elasticity_now}");
        for (int g = 0; g < groups.size(); g++) {
            WhatIfGroup group = groups.get(g);
            PriceResponse response = group.response();
            table.add(new Cells()
                    .set("group", CellValue.of(group.group().group()))
                    .set("number", CellValue.of(g + 1))
                    .set("elasticity_now", physical(group.demand().groupElasticity()))
                    .set("elasticity_typed", physical(group.demand().groupElasticity()))
                    .set("within_now", physical(response.within()))
                    .set("within", physical(response.within()))
                    .set("follow", physical(response.follow()))
                    .set("order_share", physical(GroupDemand.GROUP_SHARE))
                    .set("usual_price", physical(response.usualPrice()))
                    .set("power", physical(response.power()))
                    .set("popular_from_percent", physical(group.popularFrom()))
                    .set("equal_share_percent", physical(group.equalShare())));
        }
        return table.done();
    }

    /** The value of the drink's group. */
    private static String own(String key) {
        return "INDEX({what_if_groups." + key + ":all},{group_number})";
    }

    /** The sum of a column over the drink's group. */
    private static String sum(String key) {
        return "SUMIF({group_number:all},{group_number},{" + key + ":all})";
    }

    /** The sum of a column over the group's drinks in the analysis. */
    private static String analysed(String key) {
        return "SUMIFS({" + key + ":all},{group_number:all},{group_number},{in_analysis:all},1)";
    }

    private Table drinkTable() {
        String power = own("power");
        String usual = own("usual_price");
        String share = own("order_share");
        String follows = "(" + sum("pull") + "/" + sum("units_now") + ")^" + own("follow");
        Filling table = DRINKS.fill(words.texts())
                .input("price_typed", Input.FROM_ZERO)
                .formula(
                        "price_used",
                        "IF(ISNUMBER({price_typed}),IF({price_typed}>0,{price_typed},{price_now}),{price_now})")
                .formula("net_price", "{net_now}*{price_used}/{price_now}")
                .formula("cost_percent", "{cost}/{net_price}*100")
                .formula("margin", "{net_price}-{cost}")
                .formula(
                        "pull",
                        "{units_now}*EXP(-" + own("within") + "*" + usual + "/" + power + "*(({price_used}/" + usual
                                + ")^" + power + "-({price_now}/" + usual + ")^" + power + "))")
                .formula(
                        "units",
                        "{pull}/" + sum("pull") + "*" + sum("units_now") + "*" + follows + "/(1-" + share + "+" + share
                                + "*" + follows + ")")
                .formula("units_percent", "IF({units_now}=0,0,({units}/{units_now}-1)*100)")
                .formula("total_margin", "{units}*{margin}")
                .formula(
                        "margin_change",
                        "ROUND({total_margin}-{total_margin_now},"
                                + words.figures().currencyDecimals() + ")")
                .formula("sales", "{units}*{net_price}")
                .formula("units_cost", "{units}*{cost}")
                .formula("total_margin_now", "{units_now}*({net_now}-{cost})")
                .formula("popularity_percent", "{units}/" + analysed("units") + "*100")
                .formula("margin_class", classFormula());
        for (int g = 0; g < groups.size(); g++) {
            for (int j = 0; j < groups.get(g).drinks().size(); j++) {
                table.add(cells(groups.get(g), g, j));
            }
        }
        return table.done();
    }

    private String classFormula() {
        String tie = "-1E-9";
        String popular = "{popularity_percent}>=" + own("popular_from_percent") + tie;
        String profitable = "{margin}>=" + analysed("total_margin") + "/" + analysed("units") + tie;
        return "IF(" + popular + ",IF(" + profitable + "," + quoted("star") + "," + quoted("plowhorse") + "),IF("
                + profitable + "," + quoted("puzzle") + "," + quoted("dog") + "))";
    }

    private String quoted(String marginClass) {
        return '"' + words.say("class." + marginClass).replace("\"", "\"\"") + '"';
    }

    private Cells cells(WhatIfGroup group, int g, int j) {
        EarningSuggestion drink = group.drinks().get(j);
        double now = group.demand().unitsNow()[j];
        Cells cells = new Cells()
                .set("drink", CellValue.of(drink.price().drink().drink()))
                .set("price_now", DrinkTable.money(drink.price().drink().priceNow()))
                .set("price_typed", DrinkTable.money(drink.price().suggested()))
                .set("price_suggested", DrinkTable.money(drink.price().suggested()))
                .set("cost_percent", physical(group.costPercent(j)))
                .set("margin", physical(group.margin(j)))
                .set("units", physical(group.units()[j]))
                .set("units_percent", physical(now == 0 ? 0 : (group.units()[j] / now - 1) * 100))
                .set("total_margin", physical(group.totalMargin(j)))
                .set("margin_change", physical(printed(group.totalMargin(j) - group.totalMarginNow(j))))
                .set("group", CellValue.of(group.group().group()))
                .set("group_number", CellValue.of(g + 1))
                .set("in_analysis", CellValue.of(group.analysed()[j] ? 1 : 0))
                .set("units_now", physical(now))
                .set("net_now", DrinkTable.money(drink.price().drink().netPrice()))
                .set("cost", DrinkTable.money(drink.price().drink().cost()))
                .set("price_used", DrinkTable.money(drink.price().suggested()))
                .set("net_price", physical(group.net(j)))
                .set("pull", physical(group.pull(j)))
                .set("sales", physical(group.units()[j] * group.net(j)))
                .set("units_cost", physical(group.units()[j] * group.cost(j)))
                .set("total_margin_now", physical(group.totalMarginNow(j)));
        if (group.analysed()[j]) {
            cells.set("popularity_percent", physical(group.popularity(j)))
                    .set("margin_class", CellValue.of(words.say("class." + group.marginClass(j))));
        }
        return cells;
    }

    private Table totalTable() {
        Filling table = TOTALS.fill(words.texts())
                .formula("units_now", total("units_now"))
                .formula("units", total("units"))
                .formula("net_sales", total("sales"))
                .formula("cost_percent", total("units_cost") + "/{net_sales}*100")
                .formula("margin_now", total("total_margin_now"))
                .formula("total_margin", total("total_margin"))
                .formula("margin_change", total("margin_change"))
                .formula("margin_cut", analysedTotal("total_margin") + "/" + analysedTotal("units"))
                .formula("cost_cut_percent", analysedTotal("units_cost") + "/" + analysedTotal("sales") + "*100");
        for (int g = 0; g < groups.size(); g++) {
            table.add(totals(groups.get(g), g));
        }
        return table.done();
    }

    private static String total(String key) {
        return "SUMIF({what_if.group_number:all},{number},{what_if." + key + ":all})";
    }

    private static String analysedTotal(String key) {
        return "SUMIFS({what_if." + key + ":all},{what_if.group_number:all},{number},{what_if.in_analysis:all},1)";
    }

    private Cells totals(WhatIfGroup group, int g) {
        double sales = group.sum(j -> group.units()[j] * group.net(j));
        double margin = group.sum(group::totalMargin);
        double marginNow = group.sum(group::totalMarginNow);
        Cells cells = new Cells()
                .set("group", CellValue.of(group.group().group()))
                .set("number", CellValue.of(g + 1))
                .set("units_now", physical(group.sum(j -> group.demand().unitsNow()[j])))
                .set("units", physical(group.sum(j -> group.units()[j])))
                .set("net_sales", physical(sales))
                .set("cost_percent", physical(group.sum(j -> group.units()[j] * group.cost(j)) / sales * 100))
                .set("margin_now", physical(marginNow))
                .set("total_margin", physical(margin))
                .set(
                        "margin_change",
                        physical(group.sum(j -> printed(group.totalMargin(j) - group.totalMarginNow(j)))));
        if (group.isAnalysed()) {
            cells.set("margin_cut", physical(group.marginCut())).set("cost_cut_percent", physical(group.costCut()));
        }
        return cells;
    }

    /** As its row prints it, so that the printed rows add up. */
    private double printed(double change) {
        int decimals = words.figures().currencyDecimals();
        return Exact.ofPhysical(change).round(decimals, RoundingMode.HALF_UP).doubleValue();
    }
}
