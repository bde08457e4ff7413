package heeltap.review;

import heeltap.document.BarChart;
import heeltap.document.Block;
import heeltap.document.CellValue;
import heeltap.document.Document;
import heeltap.document.Finding;
import heeltap.document.Format;
import heeltap.document.Section;
import heeltap.document.Table;
import heeltap.document.WorkbookSheet;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Setting;
import heeltap.record.Settings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Lays a review out as sections, sheets and tables. */
final class Layout {
    static final String FINDINGS = "findings";
    static final String PLOTS = "plots";
    static final String DRINKS = "drinks";
    static final String PRICES = "prices";
    static final String COSTS = "costs";
    static final String PREPARATIONS = "preparations";
    static final String STOCK = "stock";
    static final String INVOICES = "invoices";
    static final String CHANGES = "changes";
    static final String LEDGER = "ledger";
    static final String SET_ASIDE = "set-aside";
    static final String CHECKS = "checks";
    static final String METHODS = "methods";
    static final String CAUTIONS = "cautions";

    private static final int FIRST_PAGE_FINDINGS = 7;

    private final ReviewFigures review;
    private final Words words;
    private final Tables tables;

    private Layout(ReviewFigures review, Words words) {
        this.review = review;
        this.words = words;
        this.tables = Tables.of(review, words);
    }

    static Document of(ReviewFigures review, Words words) {
        return new Layout(review, words).document();
    }

    private Document document() {
        Settings settings = review.book().settings();
        List<Finding> findings = FindingList.of(review, words);
        return new Document(
                review.book().bar(),
                review.now().month(),
                settings.get(Setting.LANGUAGE),
                review.currency(),
                words.say("title", words.month(review.now().month())),
                sections(findings),
                sheets(findings),
                tables.all());
    }

    private List<Section> sections(List<Finding> findings) {
        List<Section> sections = new ArrayList<>();
        sections.add(findingsPage(findings));
        sections.add(section(PLOTS, true, plots()));
        sections.add(section(DRINKS, true, MenuSections.drinks(review, tables, words)));
        if (!review.chains().isEmpty()) {
            sections.add(section(CHANGES, false, StockSections.changes(tables, words)));
        }
        sections.add(section(PRICES, true, MenuSections.prices(tables, words)));
        sections.add(section(COSTS, true, costs()));
        sections.add(section(STOCK, true, stockBlocks()));
        sections.add(section(INVOICES, false, StockSections.invoices(tables, words)));
        sections.add(section(LEDGER, false, StockSections.ledger(review, tables, words)));
        sections.add(section(PREPARATIONS, true, preparations()));
        sections.addAll(WorkSections.sections(review, words));
        sections.add(section(SET_ASIDE, true, setAsideBlocks()));
        sections.add(section(CHECKS, false, checks()));
        sections.add(section(METHODS, true, List.of(new Block.Columns(Methods.blocks(words)))));
        sections.add(section(CAUTIONS, false, List.of(new Block.Columns(cautions()))));
        return sections;
    }

    private List<Block> costs() {
        return List.of(
                view(
                        tables.ingredients(),
                        "ingredient measure unit_cost price_basis supplier invoice date previous_unit_cost change_percent use margin_effect"));
    }

    private List<Block> preparations() {
        return List.of(
                view(
                        tables.preparations(),
                        "preparation makes unit batch_cost unit_cost labour abv_percent sugar_g_per_100ml citric_g_per_100ml malic_g_per_100ml keeps_days month_use batches"),
                heading("table.preparation_lines.title"),
                view(tables.preparationLines(), "preparation ingredient amount unit cost computed written"));
    }

    private List<Block> checks() {
        return List.of(
                view(tables.files(), "file sheet kind encoding rows used ignored set_aside money printed_total holds"),
                heading("table.controls.title"),
                view(tables.controls(), "control scope expected found difference holds"));
    }

    private List<Block> cautions() {
        return List.of(
                caution("caution.alcohol"),
                caution("caution.allergens"),
                caution("caution.egg"),
                caution("caution.acids"),
                caution("caution.keep"),
                caution("caution.prices"),
                caution("caution.books"));
    }

    private Section findingsPage(List<Finding> findings) {
        List<Block> left = new ArrayList<>();
        left.add(new Block.Heading(words.say("findings.heading")));
        left.add(
                findings.isEmpty()
                        ? text("findings.none")
                        : new Block.Findings(
                                findings.stream().limit(FIRST_PAGE_FINDINGS).toList()));
        List<Block> right = new ArrayList<>();
        List<String> decisions = FindingList.decisions(review, words);
        if (!decisions.isEmpty()) {
            right.add(new Block.Heading(words.say("decide.heading")));
            right.add(new Block.Points(decisions));
        }
        right.add(new Block.Paragraph(joined()));
        return new Section(
                FINDINGS,
                words.say("section." + FINDINGS),
                false,
                List.of(new Block.Figures(figures()), new Block.Beside(58, left, right)));
    }

    /** The share of the till's money that was joined to drinks. */
    private String joined() {
        Money all = review.tillMoney();
        return StockTables.percentOf(review.joinedMoney(), all)
                .map(percent -> words.say(
                        "joined",
                        words.figures().percent(percent, 2),
                        words.money(all),
                        words.money(review.asideMoney())))
                .orElseGet(() -> words.say("joined.none"));
    }

    private List<Block.Figure> figures() {
        Overview now = Overview.of(review.now(), review.currency());
        Optional<Overview> before = review.before().map(month -> Overview.of(month, review.currency()));
        List<Block.Figure> figures = new ArrayList<>();
        figures.add(new Block.Figure(
                words.say("figure.net-sales"),
                CellValue.of(now.netSales()),
                Format.MONEY,
                before.map(old -> moneyChange(old.netSales(), now.netSales())).orElse("")));
        figures.add(new Block.Figure(
                words.say("figure.cost-percent"),
                CellValue.of(now.costPercent().orElse(null)),
                Format.PERCENT,
                pointsChange(before.flatMap(Overview::costPercent), now.costPercent())));
        figures.add(new Block.Figure(
                words.say("figure.margin"),
                CellValue.of(now.margin()),
                Format.MONEY,
                before.map(old -> moneyChange(old.margin(), now.margin())).orElse("")));
        figures.add(new Block.Figure(
                words.say("figure.sold"),
                CellValue.of(now.sold()),
                Format.COUNT,
                before.filter(old -> old.sold().isPositive())
                        .map(old -> percentChange(now.sold().minus(old.sold()).dividedBy(old.sold())))
                        .orElse("")));
        figures.add(new Block.Figure(
                words.say("figure.unexplained"),
                CellValue.of(now.unexplained().orElse(null)),
                Format.MONEY,
                before.flatMap(Overview::unexplained)
                        .map(old -> words.say("change.was", words.money(old)))
                        .orElse("")));
        return figures;
    }

    private String moneyChange(Money before, Money now) {
        return before.isPositive() ? percentChange(now.minus(before).dividedBy(before)) : "";
    }

    private String percentChange(Exact ratio) {
        Exact percent = ratio.times(Exact.HUNDRED);
        String sign = percent.isNegative() ? "" : "+";
        return words.say("change.on", sign + words.percent(percent), monthBefore());
    }

    private String pointsChange(Optional<Exact> before, Optional<Exact> now) {
        if (before.isEmpty() || now.isEmpty()) {
            return "";
        }
        Exact points = now.get().minus(before.get());
        String sign = points.isNegative() ? "" : "+";
        return words.say("change.points", sign + words.figures().number(points, Format.AMOUNT), monthBefore());
    }

    private String monthBefore() {
        return words.month(review.now().month().minusMonths(1));
    }

    private List<Block> plots() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(text("plots.read"));
        blocks.addAll(Plots.blocks(review.rows(), words));
        return blocks;
    }

    private List<Block> stockBlocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(text("stock.read"));
        unexplainedChart().ifPresent(blocks::add);
        blocks.add(
                new Block.TableView(
                        tables.stockGroups(),
                        keys(
                                "group opening_value purchases_value transfers_value closing_value actual_cost theoretical_cost unexplained_cost net_sales actual_cost_percent theoretical_cost_percent target_cost_percent days_on_hand turnover")));
        blocks.add(
                new Block.TableView(
                        tables.stock(),
                        keys(
                                "ingredient measure opening purchases transfers closing actual_use theoretical_use recorded_losses unexplained unexplained_percent unexplained_cost within_tolerance days_on_hand")));
        costByMonth().ifPresent(blocks::add);
        blocks.addAll(StockSections.advice(review, tables, words));
        return blocks;
    }

    /** The largest unexplained costs, missing and surplus alike. */
    private Optional<BarChart> unexplainedChart() {
        List<BarChart.Bar> bars = review.now().stock().values().stream()
                .filter(line -> line.unexplainedCost()
                        .filter(cost ->
                                !cost.rounded(review.currency()).toPlainString().matches("-?0(\\.0+)?"))
                        .isPresent())
                .sorted(Comparator.comparing(
                        line -> line.unexplainedCost().orElse(Money.ZERO).abs(), Comparator.reverseOrder()))
                .limit(12)
                .map(line -> new BarChart.Bar(
                        line.movement().ingredient(),
                        line.unexplainedCost().orElse(Money.ZERO).amount()))
                .toList();
        return bars.isEmpty()
                ? Optional.empty()
                : Optional.of(new BarChart(
                        "unexplained",
                        words.say("chart.unexplained"),
                        words.say("column.unexplained_cost"),
                        Format.MONEY,
                        bars,
                        false));
    }

    /** Cost percent by month, when three or more months are present. */
    private Optional<BarChart> costByMonth() {
        List<BarChart.Bar> bars = review.months().stream()
                .flatMap(month -> Overview.of(month, review.currency()).costPercent().stream()
                        .map(percent -> new BarChart.Bar(month.month().toString(), percent)))
                .toList();
        return bars.size() < 3
                ? Optional.empty()
                : Optional.of(new BarChart(
                        "cost-by-month",
                        words.say("chart.cost-by-month"),
                        words.say("figure.cost-percent"),
                        Format.PERCENT,
                        bars,
                        true));
    }

    private List<Block> setAsideBlocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(joined()));
        if (review.setAside().isEmpty()) {
            blocks.add(text("set-aside.none"));
        } else {
            blocks.add(
                    new Block.TableView(tables.setAside(), keys("file sheet row reason text quantity money nearest")));
        }
        if (!tables.namesToAdd().rows().isEmpty()) {
            blocks.add(heading("table.names_to_add.title"));
            blocks.add(new Block.TableView(tables.namesToAdd(), keys("as_written means in times rows money nearest")));
        }
        List<String> problems = review.problems().stream().map(Object::toString).toList();
        if (!problems.isEmpty()) {
            blocks.add(heading("set-aside.problems"));
            blocks.add(new Block.Points(problems));
        }
        return blocks;
    }

    private List<WorkbookSheet> sheets(List<Finding> findings) {
        List<WorkbookSheet> sheets = new ArrayList<>();
        sheets.add(new WorkbookSheet(
                words.say("sheet.summary"),
                List.of(new Block.Figures(figures()), new Block.Findings(findings), new Block.Paragraph(joined()))));
        List<Block> plots = Plots.blocks(review.rows(), words);
        if (!plots.isEmpty()) {
            sheets.add(new WorkbookSheet(words.say("sheet.plots"), plots));
        }
        List<Block> whatIf = WhatIf.blocks(review, words);
        if (!whatIf.isEmpty()) {
            sheets.add(new WorkbookSheet(words.say("sheet.what-if"), whatIf));
        }
        for (Table table : tables.all()) {
            sheets.add(new WorkbookSheet(
                    table.title(),
                    List.of(new Block.TableView(
                            table,
                            table.columns().stream().map(column -> column.key()).toList()))));
            if (table.name().equals(tables.preparationLines().name())) {
                sheets.addAll(WorkSections.sheets(review, words));
            }
        }
        List<Block> about = new ArrayList<>(Methods.blocks(words));
        about.add(caution("caution.alcohol"));
        about.add(caution("caution.allergens"));
        about.add(caution("caution.prices"));
        about.add(caution("caution.books"));
        sheets.add(new WorkbookSheet(words.say("sheet.methods"), about));
        return sheets;
    }

    private Section section(String id, boolean newPage, List<Block> blocks) {
        return new Section(id, words.say("section." + id), newPage, blocks);
    }

    private static Block.TableView view(Table table, String keys) {
        return new Block.TableView(table, keys(keys));
    }

    private static List<String> keys(String keys) {
        return List.of(keys.split(" ", -1));
    }

    private Block text(String key) {
        return new Block.Paragraph(words.say(key));
    }

    private Block heading(String key) {
        return new Block.Heading(words.say(key));
    }

    private Block caution(String key) {
        return new Block.Caution(words.say(key));
    }
}
