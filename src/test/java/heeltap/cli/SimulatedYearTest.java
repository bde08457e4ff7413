package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import heeltap.pricing.DrinkMonth;
import heeltap.pricing.EarningDrink;
import heeltap.pricing.EarningSuggestion;
import heeltap.pricing.GroupSuggestion;
import heeltap.pricing.Interval;
import heeltap.pricing.PricedDrink;
import heeltap.pricing.market.BarYear;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Twelve months of a bar of the simulated market as its manager has them: each month the till's export and the invoices
 * are put into the bar folder, the month is reviewed by the command, and next month's menu bears the prices that the table
 * of prices suggests. What the command makes of the folder is what the library makes of the market's own figures, so that
 * the table of the fifty bars speaks for the command too. Two things differ from it: months have the days of the calendar,
 * and the sentence of reason may name the class of a drink; both leave the figures below alone.
 */
class SimulatedYearTest {
    /** Of the most digits that a table prints. */
    private static final double DIGITS = 1e-9;

    private static final double CENT = 0.005;
    private static final Exact SERVE = Exact.of("0.05");

    @TempDir
    private Path folder;

    private final WrittenBar bar = new WrittenBar();
    private List<String> changed = List.of();
    private int reviews;

    @Test
    void theCommandsSuggestionsAreTheLibrarysAndBeatSimpleRules() {
        BarYear year = BarYear.of(BarYear.FIRST_UNTUNED, YearMonth::lengthOfMonth, this::review);
        assertThat(reviews).isEqualTo(12);
        assertThat(year.beatsSimpleRules()).isTrue();
    }

    private Map<String, Money> review(BarYear.Review review) {
        if (reviews == 0) {
            writeBook(review);
        }
        writeMonth(review);
        Path out = folder.resolve("out-" + review.month());
        Run run = Run.of(
                "review",
                bar.write(folder.resolve("bar")).toString(),
                review.month().toString(),
                "--out",
                out.toString());
        assertThat(run.code()).as(run.err()).isZero();
        Map<String, CSVRecord> prices = csv(out, "prices");
        Map<String, CSVRecord> groups = csv(out, "price_groups");
        Map<String, CSVRecord> demand = csv(out, "demand");
        for (GroupSuggestion group : review.advice()) {
            group.drinks()
                    .forEach(drink -> agrees(row(prices, drink.price().drink().drink()), drink));
            agrees(row(groups, group.group()), group);
            agreesOnDemand(row(demand, group.group()), group);
        }
        // all that the month before said was followed, and this one knows it
        assertThat(csv(out, "last_review").keySet()).containsExactlyInAnyOrderElementsOf(changed);
        changed = review.advice().stream()
                .flatMap(group -> group.drinks().stream())
                .filter(drink -> drink.price().isChange())
                .map(drink -> drink.price().drink().drink())
                .toList();
        reviews++;
        Map<String, Money> next = new TreeMap<>();
        prices.forEach((drink, row) -> next.put(drink, Money.of(row.get("price_suggested"))));
        next.forEach((drink, price) -> bar.row(
                "book/prices.csv",
                String.join("|", drink, review.month().plusMonths(1).atDay(1).toString(), text(price.amount(), 2))));
        return next;
    }

    private void writeBook(BarYear.Review review) {
        bar.file(
                        "book/settings.csv",
                        "Setting|Value",
                        "currency|EUR",
                        "menu prices include tax|yes",
                        "sales tax percent|" + text(BarYear.TAX_PERCENT, 0))
                .file("book/ingredients.csv", "Ingredient|Group|Measure")
                .file("book/drinks.csv", "Drink|Price|Category|Method")
                .file("book/specs.csv", "Item|Ingredient|Amount|Unit")
                .file("book/prices.csv", "Drink|From|Price");
        for (EarningDrink drink : review.drinks()) {
            PricedDrink priced = drink.priced();
            bar.row("book/ingredients.csv", base(priced.drink()) + "|" + priced.group() + "|ml")
                    .row(
                            "book/drinks.csv",
                            String.join(
                                    "|",
                                    priced.drink(),
                                    text(priced.priceNow().orElseThrow().amount(), 2),
                                    priced.group(),
                                    "none"))
                    .row("book/specs.csv", priced.drink() + "|" + base(priced.drink()) + "|50|ml");
        }
    }

    /** Gross money by item as a till sums it up, and ten litres of each drink's base, whose price makes its cost. */
    private void writeMonth(BarYear.Review review) {
        String sales = review.month() + "/sales.csv";
        String invoices = review.month() + "/invoices.csv";
        bar.file(sales, "Item|Quantity|Gross")
                .file(invoices, "Supplier|Invoice number|Date|Product|Pack|Quantity|Line total");
        for (DrinkMonth row : review.sold()) {
            if (row.sold().isPositive()) {
                bar.row(
                        sales,
                        String.join(
                                "|",
                                row.drink(),
                                text(row.sold(), 0),
                                text(row.price().amount().times(row.sold()), 2)));
            }
        }
        for (EarningDrink drink : review.drinks()) {
            Exact litre = drink.priced().cost().orElseThrow().amount().dividedBy(SERVE);
            bar.row(
                    invoices,
                    String.join(
                            "|",
                            "Kontor",
                            review.month().toString().replace("-", ""),
                            review.month().atDay(1).toString(),
                            base(drink.priced().drink()),
                            "1 l",
                            "10",
                            text(litre.times(Exact.of(10)), 2)));
        }
    }

    private static void agrees(CSVRecord row, EarningSuggestion drink) {
        EarningSuggestion.Expected expected = drink.demand().orElseThrow();
        assertThat(Money.of(row.get("price_suggested")))
                .as(row.toString())
                .isEqualTo(drink.price().suggested().orElseThrow());
        assertThat(Money.of(row.get("price_now")))
                .isEqualTo(drink.price().drink().priceNow().orElseThrow());
        same(row, "cost_percent_now", drink.price().costPercentNow());
        same(row, "units_now", Optional.of(expected.unitsNow()));
        same(row, "chance_of_gain_percent", expected.chancePercent());
        same(row, "elasticity_low", "elasticity", "elasticity_high", expected.elasticity());
        same(row, "units_low", "units_expected", "units_high", expected.units());
        cents(row, expected.marginChange());
    }

    private static void agrees(CSVRecord row, GroupSuggestion group) {
        assertThat(row.get("changed")).isEqualTo(Integer.toString(group.changed()));
        same(row, "average_price_change_percent", group.averageChangePercent());
        same(row, "chance_of_gain_percent", group.chancePercent());
        cents(row, ofPrintedRows(group));
    }

    /** The group's interval about the sum of its drinks' printed cents. */
    private static Interval ofPrintedRows(GroupSuggestion group) {
        Interval own = group.marginChange().orElseThrow();
        Exact sum = group.drinks().stream()
                .flatMap(drink -> drink.demand().stream())
                .map(expected -> Exact.of(expected.marginChange().value().round(2, RoundingMode.HALF_UP)))
                .reduce(Exact.ZERO, Exact::plus);
        return new Interval(own.low(), sum, own.high());
    }

    private static void agreesOnDemand(CSVRecord row, GroupSuggestion group) {
        assertThat(row.get("price_changes")).isEqualTo(Integer.toString(group.priceChanges()));
        same(row, "prior", Optional.of(group.prior().mean()));
        same(
                row,
                "elasticity_low",
                "elasticity",
                "elasticity_high",
                group.groupElasticity().orElseThrow());
    }

    private static void same(CSVRecord row, String low, String value, String high, Interval interval) {
        same(row, low, Optional.of(interval.low()));
        same(row, value, Optional.of(interval.value()));
        same(row, high, Optional.of(interval.high()));
    }

    private static void same(CSVRecord row, String column, Optional<Exact> figure) {
        String cell = row.get(column);
        assertThat(cell.isEmpty()).as(column + " of " + row).isEqualTo(figure.isEmpty());
        figure.map(Exact::toDouble)
                .ifPresent(number -> assertThat(Double.parseDouble(cell))
                        .as(column + " of " + row)
                        .isCloseTo(number, within(Math.abs(number) * DIGITS)));
    }

    private static void cents(CSVRecord row, Interval change) {
        Map.of(
                        "margin_change_low", change.low(),
                        "expected_margin_change", change.value(),
                        "margin_change_high", change.high())
                .forEach((column, sum) -> assertThat(Double.parseDouble(row.get(column)))
                        .as(column + " of " + row)
                        .isCloseTo(sum.toDouble(), within(CENT + DIGITS)));
    }

    private static String base(String drink) {
        return "Base of " + drink;
    }

    /** Exactly, or not at all. */
    private static String text(Exact number, int decimals) {
        return number.round(decimals, RoundingMode.UNNECESSARY).toPlainString();
    }

    private static CSVRecord row(Map<String, CSVRecord> rows, String name) {
        return Objects.requireNonNull(rows.get(name), name);
    }

    private static Map<String, CSVRecord> csv(Path out, String table) {
        Map<String, CSVRecord> rows = new HashMap<>();
        try (CSVParser parser = CSVParser.parse(
                Files.readString(out.resolve("tables/" + table + ".csv")),
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            parser.forEach(row -> rows.put(row.get(0), row));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }
}
