package heeltap.review;

import heeltap.document.Finding;
import heeltap.pricing.GroupSuggestion;
import heeltap.pricing.LastReview;
import heeltap.pricing.PriceSuggestion;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.Ingredient;
import heeltap.record.SetAside;
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
                    Layout.STOCK_ITEMS,
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
                PriceAdvice.Change change =
                        PriceAdvice.change(group, review.currency()).orElseThrow();
                Money gain = change.expected();
                add(
                        Layout.PRICES,
                        gain,
                        "finding.price-gain",
                        group.group(),
                        String.valueOf(group.changed()),
                        words.money(gain),
                        words.money(change.low()),
                        words.money(change.high()));
            }
        }
    }

    /** The drink whose best cheaper way saves most. */
    private void cheaperWays() {
        review.ways().stream()
                .filter(way ->
                        way.savingAMonth().isPresent() && way.newAllergens().isEmpty())
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
            findings.add(new Finding(words.say("finding.not-counted"), null, Layout.STOCK_ITEMS));
        } else if (review.now().stock().values().stream()
                .noneMatch(line -> line.movement().opening().isPresent())) {
            findings.add(new Finding(words.say("finding.no-opening"), null, Layout.STOCK_ITEMS));
        }
    }
}
