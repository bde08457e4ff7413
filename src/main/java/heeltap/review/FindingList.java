package heeltap.review;

import heeltap.document.Finding;
import heeltap.menu.MarginClass;
import heeltap.pricing.PriceSuggestion;
import heeltap.quantity.Exact;
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
        list.unknownNames();
        list.withoutCost();
        list.withoutPrice();
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
            String percent = line.unexplainedPercent()
                    .map(value -> words.percent(value.abs()))
                    .orElse(words.say("word.none"));
            add(
                    Layout.STOCK,
                    cost.abs(),
                    amount.isPositive() ? "finding.missing" : "finding.surplus",
                    ingredient.name(),
                    words.amount(amount.abs()) + " " + ingredient.measure().symbol(),
                    words.money(cost.abs()),
                    percent);
        }
    }

    /** What cost above the target takes from the month, for each drink where it is more than the price step allows. */
    private void aboveTarget() {
        for (PriceSuggestion suggestion : review.suggestions()) {
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
                        words.money(row.sales().netSales()),
                        row.cost().reason());
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
        long changes =
                review.suggestions().stream().filter(PriceSuggestion::isChange).count();
        if (changes > 0) {
            long down = review.suggestions().stream()
                    .filter(one -> one.changePercent().filter(Exact::isNegative).isPresent())
                    .count();
            points.add(words.say(
                    "decide.prices",
                    String.valueOf(changes),
                    String.valueOf(review.suggestions().size()),
                    String.valueOf(changes - down),
                    String.valueOf(down)));
        }
        drinksOf(review, MarginClass.DOG).ifPresent(names -> points.add(words.say("decide.dogs", names)));
        drinksOf(review, MarginClass.PUZZLE).ifPresent(names -> points.add(words.say("decide.puzzles", names)));
        long aside = review.setAside().stream()
                .filter(row -> !row.nearest().isEmpty())
                .count();
        if (aside > 0) {
            points.add(words.say("decide.names", String.valueOf(aside)));
        }
        long problems = review.problems().stream()
                .filter(problem -> problem.severity() == Problem.Severity.FAULT)
                .count();
        if (problems > 0) {
            points.add(words.say("decide.faults", String.valueOf(problems)));
        }
        return points;
    }

    private static final Exact SURE = Exact.of(80);

    /** Drinks of a class that is sure enough to act on. */
    private static Optional<String> drinksOf(ReviewFigures review, MarginClass wanted) {
        List<String> names = review.rows().stream()
                .filter(row -> row.classed().classes().marginClass().equals(Optional.of(wanted)))
                .filter(row -> row.certaintyPercent()
                        .filter(percent -> percent.compareTo(SURE) >= 0)
                        .isPresent())
                .map(DrinkRow::name)
                .toList();
        return names.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", names));
    }
}
