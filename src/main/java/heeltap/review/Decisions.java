package heeltap.review;

import heeltap.menu.MarginClass;
import heeltap.pricing.EarningSuggestion;
import heeltap.pricing.Interval;
import heeltap.quantity.Exact;
import heeltap.source.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What to decide at the meeting, on the first page. */
final class Decisions {
    private Decisions() {}

    /** What to decide at the meeting, from the classes and the suggestions. */
    static List<String> of(ReviewFigures review, Words words) {
        List<String> points = new ArrayList<>();
        prices(review, words, points);
        drinksOf(review, MarginClass.DOG, words).ifPresent(names -> points.add(words.say("decide.dogs", names)));
        drinksOf(review, MarginClass.PUZZLE, words).ifPresent(names -> points.add(words.say("decide.puzzles", names)));
        List<String> onTheLine = review.rows().stream()
                .filter(DrinkRow::isOnTheLine)
                .map(DrinkRow::name)
                .toList();
        if (!onTheLine.isEmpty()) {
            points.add(words.say("decide.on-the-line", listed(onTheLine, words)));
        }
        long aside = review.setAside().stream()
                .filter(row -> !row.nearest().isEmpty())
                .count();
        if (aside > 0) {
            points.add(words.say(aside == 1 ? "decide.name" : "decide.names", String.valueOf(aside)));
        }
        long problems = review.problems().stream()
                .filter(problem -> problem.severity() == Problem.Severity.FAULT)
                .count();
        if (problems > 0) {
            points.add(words.say(problems == 1 ? "decide.fault" : "decide.faults", String.valueOf(problems)));
        }
        return points;
    }

    private static final int SHOWN_PRICES = 4;

    /** How many prices change, and those that bring most with how sure they are; the rest are counted. */
    private static void prices(ReviewFigures review, Words words, List<String> points) {
        List<EarningSuggestion> changes = review.prices().drinks().stream()
                .filter(drink -> drink.price().isChange())
                .toList();
        if (changes.isEmpty()) {
            points.add(words.say("decide.no-prices"));
            return;
        }
        long down = changes.stream()
                .filter(drink ->
                        drink.price().changePercent().filter(Exact::isNegative).isPresent())
                .count();
        points.add(words.say(
                "decide.prices",
                String.valueOf(changes.size()),
                String.valueOf(review.prices().drinks().size()),
                String.valueOf(changes.size() - down),
                String.valueOf(down)));
        // a last one is named rather than counted
        int shown = changes.size() <= SHOWN_PRICES + 1 ? changes.size() : SHOWN_PRICES;
        changes.stream()
                .sorted(Comparator.comparing(Decisions::gain).reversed())
                .limit(shown)
                .forEach(drink -> points.add(price(drink, words)));
        if (shown < changes.size()) {
            points.add(words.say("decide.price-more", String.valueOf(changes.size() - shown)));
        }
    }

    /** One change: where units go, between what bounds, and its chance to pay; without an estimate its reason. */
    private static String price(EarningSuggestion drink, Words words) {
        String name = drink.price().drink().drink();
        String now = words.money(drink.price().drink().priceNow().orElseThrow());
        String then = words.money(drink.price().suggested().orElseThrow());
        Optional<EarningSuggestion.Expected> expected = drink.demand();
        Optional<Exact> chance = expected.flatMap(EarningSuggestion.Expected::chancePercent);
        Optional<Interval> units = expected.flatMap(EarningSuggestion.Expected::unitsPercents);
        if (chance.isEmpty() || units.isEmpty()) {
            return words.say(
                    "decide.price",
                    name,
                    now,
                    then,
                    PriceTables.reason(drink.price().reason(), words));
        }
        boolean fall = units.get().value().isNegative();
        return words.say(
                fall ? "decide.price-units-fall" : "decide.price-units-rise",
                name,
                now,
                then,
                whole(units.get().value().abs(), words),
                signed(units.get().low(), words),
                signed(units.get().high(), words),
                whole(chance.get(), words));
    }

    private static String signed(Exact percent, Words words) {
        String printed = whole(percent, words);
        return percent.isNegative() ? printed : "+" + printed;
    }

    private static String whole(Exact percent, Words words) {
        return words.figures().percent(percent, 0);
    }

    private static Exact gain(EarningSuggestion drink) {
        return drink.demand().map(expected -> expected.marginChange().value()).orElse(Exact.ZERO);
    }

    /** Drinks of a class that is sure enough to act on. */
    private static Optional<String> drinksOf(ReviewFigures review, MarginClass wanted, Words words) {
        List<String> names = review.rows().stream()
                .filter(row -> row.classed().classes().marginClass().equals(Optional.of(wanted)))
                .filter(DrinkRow::isSure)
                .map(DrinkRow::name)
                .toList();
        return names.isEmpty() ? Optional.empty() : Optional.of(listed(names, words));
    }

    private static final int SHOWN_NAMES = 6;

    /** The first few, and how many more there are. */
    private static String listed(List<String> names, Words words) {
        String shown = String.join("; ", names.subList(0, Math.min(SHOWN_NAMES, names.size())));
        int more = names.size() - SHOWN_NAMES;
        return more <= 0 ? shown : words.say("list.more", shown, String.valueOf(more));
    }
}
