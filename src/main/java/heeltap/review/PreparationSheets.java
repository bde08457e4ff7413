package heeltap.review;

import heeltap.cost.CostLine;
import heeltap.cost.PreparationCost;
import heeltap.document.Card;
import heeltap.document.Card.Fact;
import heeltap.document.Card.Line;
import heeltap.document.Card.Measured;
import heeltap.document.CellValue;
import heeltap.document.Format;
import heeltap.document.Table;
import heeltap.mixture.Contents;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.Preparation;
import heeltap.review.TableShape.Cells;
import heeltap.review.TableShape.Filling;
import heeltap.source.Problem;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What to weigh for each preparation, for a batch and for the coming month, and how it is made. */
final class PreparationSheets {
    private static final Exact THOUSAND = Exact.of(1000);

    private final MonthFigures month;
    private final Words words;
    private final Map<String, Exact> need;

    private PreparationSheets(Book book, MonthFigures month, Words words) {
        this.month = month;
        this.words = words;
        this.need = ComingMonth.preparations(book, month);
    }

    static List<Card> cards(Book book, MonthFigures month, Words words) {
        PreparationSheets sheets = new PreparationSheets(book, month, words);
        return book.preparations().stream()
                .map(sheets::cost)
                .filter(cost -> !cost.lines().isEmpty())
                .map(sheets::card)
                .toList();
    }

    /** The same as figures: one row a line. */
    static Table table(Book book, MonthFigures month, Words words) {
        PreparationSheets sheets = new PreparationSheets(book, month, words);
        Filling table = Shapes.PREPARATION_SHEETS.fill(words.texts());
        for (Preparation preparation : book.preparations()) {
            PreparationCost cost = sheets.cost(preparation);
            int order = 0;
            for (CostLine line : cost.lines()) {
                order++;
                Cells cells = new Cells()
                        .set("preparation", CellValue.of(preparation.name()))
                        .set("line", CellValue.of(order))
                        .set("ingredient", CellValue.of(line.ingredient()))
                        .set("computed", CellValue.of(line.computed()))
                        .set("note", CellValue.of(line.note()));
                sheets.taken(line)
                        .ifPresent(amount -> cells.set("batch_amount", CellValue.of(amount.value()))
                                .set("unit", TraceTables.unit(line, amount, words))
                                .set("batch_printed", CellValue.of(Measures.plain(amount))));
                sheets.forMonth(cost, line)
                        .ifPresent(amount -> cells.set("month_amount", CellValue.of(amount.value()))
                                .set("month_printed", CellValue.of(Measures.plain(amount))));
                table.add(cells);
            }
        }
        return table.done();
    }

    private String printed(Amount amount) {
        Measured measured = Measures.of(amount);
        return words.figures()
                .plain(
                        measured.amount().round(measured.decimals(), RoundingMode.HALF_UP),
                        measured.least(),
                        measured.decimals());
    }

    private String makes(PreparationCost cost) {
        Amount makes = cost.makes();
        if (makes == null) {
            return "";
        }
        return makes.measure() == Measure.EACH
                ? printed(makes)
                : printed(makes) + "\u00A0" + makes.measure().symbol();
    }

    private PreparationCost cost(Preparation preparation) {
        return month.costs().preparationOn(preparation.name(), month.lastDay());
    }

    /** With what is wasted on the way. */
    private Optional<Amount> taken(CostLine line) {
        return Optional.ofNullable(line.amount())
                .map(amount -> new Amount(
                        amount.value().times(Exact.ONE.plus(line.wastePercent().percent())), amount.measure()));
    }

    private Optional<Amount> forMonth(PreparationCost cost, CostLine line) {
        return batches(cost)
                .flatMap(batches ->
                        taken(line).map(amount -> new Amount(amount.value().times(batches), amount.measure())));
    }

    /** Batches that the coming month needs; empty where it needs none or what a batch makes is not known. */
    private Optional<Exact> batches(PreparationCost cost) {
        Exact wanted = need.getOrDefault(cost.name(), Exact.ZERO);
        return Optional.ofNullable(cost.makes())
                .filter(makes -> makes.value().isPositive() && wanted.isPositive())
                .map(makes -> wanted.dividedBy(makes.value()));
    }

    private Card card(PreparationCost cost) {
        List<String> headings = List.of(
                words.say("sheet.batch"),
                words.say("sheet.month", words.month(month.month().plusMonths(1))));
        List<Line> lines = cost.lines().stream()
                .map(line -> new Line(
                        line.ingredient(),
                        line.note(),
                        List.of(
                                taken(line).map(amount -> SpecWords.measured(line, amount)),
                                forMonth(cost, line).map(amount -> SpecWords.measured(line, amount)))))
                .toList();
        Optional<Line> whole = Optional.ofNullable(cost.makes())
                .map(makes -> new Line(
                        words.say("sheet.makes"),
                        "",
                        List.of(
                                Optional.of(Measures.of(makes)),
                                batches(cost)
                                        .map(batches -> Measures.of(
                                                new Amount(makes.value().times(batches), makes.measure()))))));
        return new Card(
                cost.name(),
                "",
                headings,
                lines,
                whole,
                words.say("sheet.own"),
                facts(cost),
                WorkSteps.of(cost, makes(cost), words),
                Cautions.of(cost, words));
    }

    private List<Fact> facts(PreparationCost cost) {
        List<Fact> facts = new ArrayList<>();
        Optional.ofNullable(cost.batchCost())
                .ifPresent(money -> facts.add(fact("sheet.batch-cost", words.money(money))));
        Optional.ofNullable(cost.unitCost()).ifPresent(money -> facts.add(unitCost(cost, money)));
        if (cost.minutes().isPositive()) {
            facts.add(fact(
                    "sheet.labour",
                    words.say("sheet.minutes", words.count(cost.minutes()), words.money(cost.labour()))));
        }
        batches(cost).ifPresent(batches -> facts.add(fact("sheet.batches", words.amount(batches))));
        contents(cost, facts);
        facts.add(fact(
                "sheet.allergens",
                cost.allergens().isEmpty() ? words.say("sheet.none-said") : String.join("; ", cost.allergens())));
        cost.faults().stream()
                .map(Problem::reason)
                .distinct()
                .forEach(reason -> facts.add(fact("sheet.fault", reason)));
        return facts;
    }

    private Fact unitCost(PreparationCost cost, Money money) {
        return switch (cost.preparation().measure()) {
            case ML -> fact("sheet.litre-cost", words.money(money.times(THOUSAND)));
            case G -> fact("sheet.kilo-cost", words.money(money.times(THOUSAND)));
            case EACH -> fact("sheet.piece-cost", words.money(money));
        };
    }

    private void contents(PreparationCost cost, List<Fact> facts) {
        Contents one = cost.contents();
        boolean known = cost.unknownComposition().isEmpty();
        if (cost.preparation().measure() == Measure.EACH || one.volumeMl() <= 0 || one.massG() <= 0) {
            return;
        }
        content(facts, "sheet.abv", words.percent(Exact.ofPhysical(one.abvPercent())), one.abvPercent(), false);
        content(facts, "sheet.sugar", per100(one, one.sugarG()), one.sugarG(), known);
        content(facts, "sheet.acidity", per100(one, one.acidityAsCitricG()), one.acidityAsCitricG(), known);
        content(facts, "sheet.salt", words.percent(Exact.ofPhysical(one.massPercent(one.saltG()))), one.saltG(), false);
    }

    private String per100(Contents one, double grams) {
        return words.say("sheet.per-100", words.figures().number(Exact.ofPhysical(one.per100Ml(grams)), Format.AMOUNT));
    }

    private void content(List<Fact> facts, String key, String value, double grams, boolean none) {
        if (grams > 0 || none) {
            facts.add(fact(key, value));
        }
    }

    private Fact fact(String key, String value) {
        return new Fact(words.say(key), value);
    }
}
