package heeltap.review;

import heeltap.cost.CostLine;
import heeltap.cost.DrinkCost;
import heeltap.cost.Glass;
import heeltap.document.Card;
import heeltap.document.Card.Fact;
import heeltap.document.Card.Line;
import heeltap.document.Format;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.record.Method;
import heeltap.record.Setting;
import heeltap.record.Settings;
import heeltap.source.Problem;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** How each drink is made and what is in its glass. */
final class SpecCards {
    private final Settings settings;
    private final Words words;

    private SpecCards(Settings settings, Words words) {
        this.settings = settings;
        this.words = words;
    }

    /** One for each drink that has lines, in the book's order. */
    static List<Card> cards(List<DrinkRow> rows, Settings settings, Words words) {
        SpecCards cards = new SpecCards(settings, words);
        return rows.stream()
                .filter(row -> !row.cost().lines().isEmpty())
                .map(cards::card)
                .toList();
    }

    private Card card(DrinkRow row) {
        DrinkCost cost = row.cost();
        Map<String, Exact> served = Served.figures(cost, settings);
        return new Card(
                row.name(),
                summary(cost, served),
                List.of(""),
                cost.lines().stream().map(SpecCards::line).toList(),
                Optional.empty(),
                "",
                facts(row, served),
                List.of(),
                Cautions.of(cost, words));
    }

    /** The amount as the spec has it stands before the name; at the edge ml or g, unless that says the same. */
    private static Line line(CostLine line) {
        String written = SpecWords.written(line);
        return new Line(
                written.isEmpty() ? line.ingredient() : written + " " + line.ingredient(),
                line.note(),
                List.of(measured(line)
                        .filter(amount -> !written.replace(',', '.')
                                .equals(Measures.plain(amount) + " "
                                        + amount.measure().symbol()))
                        .map(Measures::of)));
    }

    /** In ml or g, of juice its ml; empty for pieces and serves. */
    private static Optional<Amount> measured(CostLine line) {
        return Optional.ofNullable(line.amount())
                .map(amount -> line.form() == CostLine.Form.JUICE
                        ? new Amount(Exact.ofPhysical(line.holds().volumeMl()), Measure.ML)
                        : amount)
                .filter(amount -> amount.measure() != Measure.EACH);
    }

    private String summary(DrinkCost cost, Map<String, Exact> served) {
        String method = words.say("method-of." + cost.drink().method().name().toLowerCase(Locale.ROOT));
        if (served.isEmpty()) {
            return method;
        }
        Glass glass = cost.glass();
        String water = words.percent(Exact.ofPhysical(glass.waterPercent()));
        String end = Optional.ofNullable(served.get("end_celsius"))
                .map(celsius -> words.figures().plain(celsius.round(1, RoundingMode.HALF_UP), 0, 1))
                .orElse("");
        return switch (glass.waterFrom()) {
            case NOTHING -> method;
            case DRINK -> ownWater(cost, method, water);
            case METHOD -> words.say("card.water.usual", method, water);
            case HEAT_BALANCE -> words.say("card.water.balance", method, water, end);
        };
    }

    private String ownWater(DrinkCost cost, String method, String water) {
        if (cost.drink().method() != Method.NONE) {
            return words.say("card.water.own", method, water);
        }
        return cost.glass().waterPercent() == 0 ? method : words.say("card.water.added", method, water);
    }

    private List<Fact> facts(DrinkRow row, Map<String, Exact> served) {
        List<Fact> facts = new ArrayList<>();
        Optional.ofNullable(served.get("served_ml"))
                .ifPresent(ml -> facts.add(fact(
                        "card.served",
                        words.say(
                                row.cost().glass().served().estimated() ? "card.ml-estimated" : "card.ml",
                                words.figures().number(ml, Format.AMOUNT)))));
        Optional.ofNullable(served.get("abv_percent"))
                .ifPresent(abv -> facts.add(fact("sheet.abv", words.percent(abv))));
        figure(facts, served, "alcohol_g", "card.alcohol", "g");
        Optional.ofNullable(served.get("standard_drinks"))
                .ifPresent(drinks -> facts.add(fact(
                        "card.standard",
                        words.say(
                                "card.standard-of",
                                words.amount(drinks),
                                words.amount(settings.get(Setting.STANDARD_DRINK_GRAMS))))));
        per100(facts, served, "sugar_g_per_100ml", "sheet.sugar");
        per100(facts, served, "acidity_as_citric_g_per_100ml", "sheet.acidity");
        per100(facts, served, "salt_g_per_100ml", "card.salt");
        figure(facts, served, "sugar_to_acid", "card.ratio", "");
        Optional.ofNullable(served.get("energy_kcal"))
                .ifPresent(kcal -> facts.add(fact(
                        "card.energy",
                        words.say(
                                "card.kcal-kj",
                                words.count(whole(kcal)),
                                words.count(whole(Optional.ofNullable(served.get("energy_kj"))
                                        .orElse(Exact.ZERO)))))));
        row.cost().cost().ifPresent(cost -> facts.add(fact("card.cost", words.money(cost))));
        row.menuPrice().ifPresent(price -> facts.add(fact("card.price", words.money(price))));
        facts.add(fact(
                "sheet.allergens",
                row.cost().allergens().isEmpty()
                        ? words.say("sheet.none-said")
                        : String.join("; ", row.cost().allergens())));
        row.cost().faults().stream()
                .map(Problem::reason)
                .distinct()
                .forEach(reason -> facts.add(fact("sheet.fault", reason)));
        return facts;
    }

    private static Exact whole(Exact number) {
        return Exact.of(number.round(0, RoundingMode.HALF_UP));
    }

    private void figure(List<Fact> facts, Map<String, Exact> served, String figure, String key, String unit) {
        Exact number = served.get(figure);
        if (number != null) {
            String printed = words.figures().number(number, Format.AMOUNT);
            facts.add(fact(key, unit.isEmpty() ? printed : printed + "\u00A0" + unit));
        }
    }

    private void per100(List<Fact> facts, Map<String, Exact> served, String figure, String key) {
        Exact number = served.get(figure);
        if (number != null && number.isPositive()) {
            facts.add(fact(key, words.say("sheet.per-100", words.figures().number(number, Format.AMOUNT))));
        }
    }

    private Fact fact(String key, String value) {
        return new Fact(words.say(key), value);
    }
}
