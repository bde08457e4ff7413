package heeltap.review;

import heeltap.document.Finding;
import heeltap.menu.MarginClass;
import heeltap.pricing.EarningSuggestion;
import heeltap.pricing.GroupSuggestion;
import heeltap.pricing.Interval;
import heeltap.pricing.LastReview;
import heeltap.pricing.PriceSuggestion;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.Ingredient;
import heeltap.record.SetAside;
import heeltap.source.Problem;
import heeltap.stock.InvoiceTie;
import heeltap.stock.Reconciliation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What the owner should hear, each in one sentence with its money, the largest first. */
final class FindingList {
    /** How many times the menu price, up or down, is too far. */
    private static final Exact FAR = Exact.of(2);

    private final ReviewFigures review;
    private final Words words;
    private final List<Finding> findings = new ArrayList<>();

    private FindingList(ReviewFigures review, Words words) {
        this.review = review;
        this.words = words;
    }

    /** All findings, those with the most money first, those without money last. */
    static List<Finding> of(ReviewFigures review, Words words) {
        FindingList list = new FindingList(review, words);
        list.noSales();
        list.unexplained();
        list.aboveTarget();
        list.priceGains();
        list.lastReview();
        list.cheaperWays();
        list.unknownNames();
        list.withoutCost();
        list.withoutPrice();
        list.farPrices();
        list.offMenu();
        list.invoices();
        list.unclaimedLines();
        list.notCounted();
        list.findings.addAll(StockFindings.of(review, words));
        return list.findings.stream()
                .sorted(Comparator.comparing(
                        (Finding finding) -> finding.amount() == null
                                ? Money.ZERO
                                : finding.amount().abs(),
                        Comparator.reverseOrder()))
                .toList();
    }

    private void add(String section, Money amount, String key, Object... printed) {
        findings.add(new Finding(words.say(key, printed), amount, section));
    }

    private void noSales() {
        if (review.salesFiles().isEmpty()) {
            findings.add(new Finding(words.say("finding.no-sales"), null, Layout.CHECKS));
        }
    }

    private void unexplained() {
        for (Ingredient ingredient : review.book().ingredients()) {
            Reconciliation line = Optional.ofNullable(review.now().stock().get(ingredient.name()))
                    .orElseThrow();
            if (line.withinTolerance().orElse(true)) {
                continue;
            }
            Money cost = line.unexplainedCost().orElse(Money.ZERO);
            Exact amount = line.unexplained().orElse(Exact.ZERO);
            boolean pieces = ingredient.measure() == Measure.EACH;
            String percent = line.unexplainedPercent()
                    .map(value -> words.percent(value.abs()))
                    .orElse(words.say("word.none"));
            add(
                    Layout.STOCK,
                    cost.abs(),
                    (amount.isPositive() ? "finding.missing" : "finding.surplus") + (pieces ? "-each" : ""),
                    ingredient.name(),
                    pieces
                            ? words.amount(amount.abs())
                            : words.amount(amount.abs()) + " "
                                    + words.measure(ingredient.measure()).said(),
                    words.money(cost.abs()),
                    percent);
        }
    }

    /** What cost above the target takes from the month, for each drink where it is more than the price step allows. */
    private void aboveTarget() {
        for (PriceSuggestion suggestion : review.prices().prices()) {
            Exact target = suggestion.drink().targetCostPercent();
            Optional<Exact> now = suggestion.costPercentNow().filter(percent -> percent.isGreaterThan(target));
            Optional<DrinkRow> row = row(suggestion.drink().drink()).filter(DrinkRow::included);
            if (now.isEmpty() || row.isEmpty()) {
                continue;
            }
            Money amount =
                    row.get().sales().netSales().times(now.get().minus(target).percent());
            add(
                    Layout.PRICES,
                    amount,
                    "finding.above-target",
                    suggestion.drink().drink(),
                    words.percent(now.get()),
                    words.percent(target),
                    words.money(amount));
        }
    }

    /** What the suggested prices of each group should bring together. */
    private void priceGains() {
        for (GroupSuggestion group : review.prices().groups()) {
            if (group.chancePercent().isPresent()) {
                Interval change = group.marginChange().orElseThrow();
                Money gain = new Money(change.value());
                add(
                        Layout.PRICES,
                        gain,
                        "finding.price-gain",
                        group.group(),
                        String.valueOf(group.changed()),
                        words.money(gain),
                        words.money(new Money(change.low())),
                        words.money(new Money(change.high())));
            }
        }
    }

    /** The drink whose best cheaper way saves most. */
    private void cheaperWays() {
        review.ways().stream()
                .filter(way -> way.savingAMonth().isPresent())
                .max(Comparator.comparing(way -> way.savingAMonth().orElseThrow()))
                .ifPresent(way -> add(
                        Layout.PRICES,
                        way.savingAMonth().orElseThrow(),
                        "finding.cheaper-way",
                        way.drink(),
                        CheaperTable.sentence(way, way.way().orElseThrow(), words),
                        words.money(way.savingAMonth().orElseThrow())));
    }

    /** How last month's suggestions that were followed turned out. */
    private void lastReview() {
        List<LastReview.Outcome> outcomes = review.prices().outcomes();
        List<String> outside = outcomes.stream()
                .filter(outcome -> !outcome.held())
                .map(LastReview.Outcome::drink)
                .toList();
        if (!outcomes.isEmpty()) {
            add(
                    Layout.PRICES,
                    Money.ZERO,
                    outside.isEmpty() ? "finding.followed" : "finding.followed-outside",
                    String.valueOf(outcomes.size()),
                    String.valueOf(outcomes.size() - outside.size()),
                    String.join(", ", outside));
        }
    }

    private Optional<DrinkRow> row(String drink) {
        return review.rows().stream().filter(row -> row.name().equals(drink)).findFirst();
    }

    private void unknownNames() {
        Map<String, Money> byName = new TreeMap<>();
        Map<String, SetAside> samples = new HashMap<>();
        for (SetAside row : review.setAside()) {
            boolean inSales = review.salesFiles().stream()
                    .anyMatch(file -> file.place().file().equals(row.place().file()));
            if (inSales && !row.nearest().isEmpty()) {
                byName.merge(row.text(), Optional.ofNullable(row.money()).orElse(Money.ZERO), Money::plus);
                samples.putIfAbsent(row.text(), row);
            }
        }
        if (byName.isEmpty()) {
            return;
        }
        Money sum = byName.values().stream().reduce(Money.ZERO, Money::plus);
        String largest = byName.entrySet().stream()
                .max(Map.Entry.<String, Money>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .orElseThrow()
                .getKey();
        add(
                Layout.SET_ASIDE,
                sum,
                byName.size() == 1 ? "finding.unknown-name" : "finding.unknown-names",
                words.money(sum),
                String.valueOf(byName.size()),
                largest,
                Optional.ofNullable(samples.get(largest))
                        .orElseThrow()
                        .nearest()
                        .get(0));
    }

    private void withoutCost() {
        for (DrinkRow row : review.rows()) {
            if (row.cost().cost().isEmpty()) {
                add(
                        Layout.DRINKS,
                        row.sales().netSales(),
                        "finding.no-cost",
                        row.name(),
                        words.money(row.sales().netSales()));
            }
        }
    }

    private void withoutPrice() {
        for (DrinkRow row : review.rows()) {
            if (row.menuPrice().isEmpty()) {
                add(
                        Layout.DRINKS,
                        row.sales().netSales(),
                        "finding.no-price",
                        row.name(),
                        words.money(row.sales().netSales()));
            }
        }
    }

    /** Sales money that no discount explains: a quantity or a price of the file may be another thing than it seems. */
    private void farPrices() {
        List<DrinkRow> far = review.rows().stream()
                .filter(FindingList::isFar)
                .sorted(Comparator.comparing((DrinkRow row) -> row.sales().netSales(), Comparator.reverseOrder()))
                .toList();
        if (far.isEmpty()) {
            return;
        }
        DrinkRow largest = far.get(0);
        Money sum = far.stream().map(row -> row.sales().netSales()).reduce(Money.ZERO, Money::plus);
        add(
                Layout.DRINKS,
                sum.abs(),
                far.size() == 1 ? "finding.far-price" : "finding.far-prices",
                largest.name(),
                words.money(largest.sales().paid().dividedBy(largest.sales().sold())),
                words.money(largest.menuPrice().orElseThrow()),
                words.money(sum),
                String.valueOf(far.size()));
    }

    private static boolean isFar(DrinkRow row) {
        DrinkSales sales = row.sales();
        Money menu = row.menuPrice().orElse(Money.ZERO);
        if (!menu.isPositive() || !sales.sold().isPositive() || !sales.moneyKnown() || sales.pricedByMenu()) {
            return false;
        }
        Money each = sales.paid().dividedBy(sales.sold());
        return each.compareTo(menu.times(FAR)) > 0 || each.times(FAR).compareTo(menu) < 0;
    }

    private void offMenu() {
        String offMenu = words.say("note.off-menu");
        for (DrinkRow row : review.rows()) {
            if (row.note().contains(offMenu)) {
                add(Layout.DRINKS, Money.ZERO, "finding.off-menu", row.name());
            }
        }
    }

    private void invoices() {
        for (InvoiceTie tie : review.now().ties()) {
            if (!tie.holds()) {
                Money difference = tie.difference().orElse(Money.ZERO);
                add(
                        Layout.INVOICES,
                        difference.abs(),
                        "finding.invoice",
                        tie.invoice().number(),
                        tie.invoice().supplier(),
                        words.money(tie.total()),
                        words.money(tie.total().minus(difference)));
            }
        }
    }

    private void unclaimedLines() {
        Money sum = Money.ZERO;
        int lines = 0;
        for (var purchase : review.now().purchases().purchases()) {
            if (purchase.ingredient() == null && !purchase.ignored()) {
                sum = sum.plus(purchase.goods());
                lines++;
            }
        }
        if (lines > 0) {
            add(Layout.INVOICES, sum, "finding.unclaimed", String.valueOf(lines), words.money(sum));
        }
    }

    private void notCounted() {
        if (!review.now().counted()) {
            findings.add(new Finding(words.say("finding.not-counted"), null, Layout.STOCK));
        } else if (review.now().stock().values().stream()
                .noneMatch(line -> line.movement().opening().isPresent())) {
            findings.add(new Finding(words.say("finding.no-opening"), null, Layout.STOCK));
        }
    }

    /** What to decide at the meeting, from the classes and the suggestions. */
    static List<String> decisions(ReviewFigures review, Words words) {
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

    private static final int SHOWN_PRICES = 3;

    /** How many prices change, and those that bring most with their reasons. */
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
        changes.stream()
                .sorted(Comparator.comparing(FindingList::gain).reversed())
                .limit(SHOWN_PRICES)
                .forEach(drink -> points.add(words.say(
                        "decide.price",
                        drink.price().drink().drink(),
                        words.money(drink.price().drink().priceNow().orElseThrow()),
                        words.money(drink.price().suggested().orElseThrow()),
                        PriceTables.reason(drink.price().reason(), words))));
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
