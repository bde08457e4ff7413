package heeltap.review;

import heeltap.document.BarChart;
import heeltap.document.Block;
import heeltap.document.CellValue;
import heeltap.document.Document;
import heeltap.document.Finding;
import heeltap.document.Format;
import heeltap.document.LineChart;
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
    static final String STOCK_ITEMS = "stock-items";
    static final String INVOICES = "invoices";
    static final String CHANGES = "changes";
    static final String LEDGER = "ledger";
    static final String SET_ASIDE = "set-aside";
    static final String CHECKS = "checks";
    static final String METHODS = "methods";
    static final String CAUTIONS = "cautions";

    private static final int MOST_BARS = 12;

    private final ReviewFigures review;
    private final Words words;
    private final Tables tables;
    private final FrontPage front;

    private Layout(ReviewFigures review, Words words) {
        this.review = review;
        this.words = words;
        this.tables = Tables.of(review, words);
        this.front = new FrontPage(review, words);
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
        sections.add(front.page(findings));
        sections.add(section(PLOTS, true, plots()));
        sections.add(section(DRINKS, true, MenuSections.drinks(review, tables, words)));
        if (!review.chains().isEmpty()) {
            sections.add(section(CHANGES, false, StockSections.changes(review, tables, words)));
        }
        sections.add(section(PRICES, true, MenuSections.prices(tables, words)));
        sections.add(section(COSTS, true, costs()));
        sections.add(section(STOCK, true, stockBlocks()));
        sections.add(section(STOCK_ITEMS, false, stockItems()));
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
        List<Block> blocks = new ArrayList<>();
        costDrivers().ifPresent(blocks::add);
        blocks.add(
                view(
                        tables.ingredients(),
                        "ingredient measure unit_cost price_basis supplier invoice date previous_unit_cost change_percent use margin_effect"));
        return blocks;
    }

    /** The ingredients whose change of price moved the month's margin most, either way. */
    private Optional<BarChart> costDrivers() {
        Table ingredients = tables.ingredients();
        List<BarChart.Bar> bars = new ArrayList<>();
        for (int i = 0; i < ingredients.rows().size(); i++) {
            if (ingredients.cell(i, "margin_effect") instanceof CellValue.Sum effect
                    && !Money.of(effect.money().rounded(review.currency())).isZero()
                    && ingredients.cell(i, "ingredient") instanceof CellValue.Text name) {
                bars.add(new BarChart.Bar(name.text(), effect.money().amount()));
            }
        }
        return chart("cost-drivers", "column.margin_effect", bars);
    }

    private Optional<BarChart> chart(String name, String valueTitle, List<BarChart.Bar> bars) {
        List<BarChart.Bar> largest = bars.stream()
                .sorted(Comparator.comparing((BarChart.Bar bar) -> bar.value().abs(), Comparator.reverseOrder()))
                .limit(MOST_BARS)
                .toList();
        return largest.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new BarChart(name, words.say("chart." + name), words.say(valueTitle), Format.MONEY, largest));
    }

    private List<Block> preparations() {
        return List.of(
                view(
                        tables.preparations(),
                        "preparation makes unit batch_cost unit_cost labour abv_percent sugar_g_per_100ml citric_g_per_100ml malic_g_per_100ml keeps_days month_use batches"),
                heading("table.preparation_lines.title"),
                view(tables.preparationLines(), "preparation ingredient amount unit cost computed written"));
    }

    /** The checks that hold are counted; those that do not are listed. */
    private List<Block> checks() {
        Table controls = tables.controls();
        Table failing = controls.where(row -> row.cells().contains(CellValue.of(false)));
        int all = controls.rows().size();
        int holding = all - failing.rows().size();
        List<Block> blocks = new ArrayList<>();
        blocks.add(view(tables.files(), "file sheet kind rows used ignored set_aside money printed_total holds"));
        blocks.add(heading("table.controls.title"));
        blocks.add(new Block.Paragraph(words.say(
                "checks.hold", words.count(Exact.of(holding)), words.count(Exact.of(all)), controls.title())));
        if (!failing.rows().isEmpty()) {
            blocks.add(view(failing, "control scope expected found difference holds"));
        }
        return blocks;
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
        stockPercents().ifPresent(blocks::add);
        costByMonth().ifPresent(blocks::add);
        return blocks;
    }

    private List<Block> stockItems() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Block.TableView(
                        tables.stock(),
                        keys(
                                "ingredient measure opening purchases transfers closing actual_use theoretical_use recorded_losses unexplained unexplained_percent unexplained_cost within_tolerance days_on_hand")));
        blocks.addAll(StockSections.advice(review, tables, words));
        return blocks;
    }

    /** Why the cost percent of the first page is another than the theoretical one of the groups. */
    private Optional<Block> stockPercents() {
        Optional<Exact> drinks = Overview.of(review.now(), review.currency()).costPercent();
        Optional<Exact> goods = StockGroups.theoreticalPercent(review.book(), review.now(), review.currency());
        return drinks.isPresent() && goods.isPresent()
                ? Optional.of(new Block.Paragraph(
                        words.say("stock.percents", words.percent(drinks.get()), words.percent(goods.get()))))
                : Optional.empty();
    }

    /** The largest unexplained costs, missing and surplus alike. */
    private Optional<BarChart> unexplainedChart() {
        List<BarChart.Bar> bars = review.now().stock().values().stream()
                .filter(line -> line.unexplainedCost()
                        .filter(cost ->
                                !Money.of(cost.rounded(review.currency())).isZero())
                        .isPresent())
                .map(line -> new BarChart.Bar(
                        line.movement().ingredient(),
                        line.unexplainedCost().orElse(Money.ZERO).amount()))
                .toList();
        return chart("unexplained", "column.unexplained_cost", bars);
    }

    /** Cost of goods over net sales by month, as theory and as the counts have it, when three or more months are present. */
    private Optional<LineChart> costByMonth() {
        List<Exact> theory = new ArrayList<>();
        List<Optional<Exact>> actual = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        for (MonthFigures month : review.months()) {
            StockGroups.theoreticalPercent(review.book(), month, review.currency())
                    .ifPresent(percent -> {
                        labels.add(words.month(month.month()));
                        theory.add(percent);
                        actual.add(StockGroups.actualPercent(review.book(), month, review.currency(), words));
                    });
        }
        return labels.size() < 3
                ? Optional.empty()
                : Optional.of(new LineChart(
                        "cost-by-month",
                        words.say("chart.cost-by-month"),
                        words.say("chart.cost-by-month.axis"),
                        Format.PERCENT,
                        labels,
                        List.of(
                                new LineChart.Line(words.say("column.actual_cost_percent"), actual),
                                new LineChart.Line(
                                        words.say("column.theoretical_cost_percent"),
                                        theory.stream().map(Optional::of).toList()))));
    }

    private List<Block> setAsideBlocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(front.joined()));
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
                List.of(
                        new Block.Figures(front.figures()),
                        new Block.Findings(findings),
                        new Block.Paragraph(front.joined()))));
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
