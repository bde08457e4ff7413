package heeltap.menu;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MenuAnalysisTest {
    @Test
    void aDrinkAddedOnTheTwentiethIsNotUnpopularForIt() {
        MenuGroup group = group(item("Old", 90, 30, "2"), item("Other", 90, 30, "2"), item("New", 33, 11, "2"));
        for (ClassedDrink drink : group.drinks()) {
            assertThat(drink.popularity().orElseThrow().percent()).isEqualTo(Exact.HUNDRED.dividedBy(Exact.of(3)));
            assertThat(drink.classes().popular()).contains(true);
        }
        assertThat(group.drinks().get(2).popularity().orElseThrow().mixPercent())
                .isEqualTo(Exact.of(3300).dividedBy(Exact.of(213)));
    }

    @Test
    void aDrinkWithoutCostCountsAmongTheDrinksButNotInTheSums() {
        MenuItem unknown = new MenuItem(
                "Unknown",
                "G",
                Exact.of(50),
                Money.of("500"),
                Exact.ZERO,
                Optional.of(Money.of("10")),
                Optional.empty(),
                Money.ZERO,
                30,
                true,
                new TreeMap<>());
        MenuGroup group = group(item("A", 30, 30, "2"), item("B", 20, 30, "4"), unknown);
        assertThat(group.drinksOnMenu()).isEqualTo(3);
        assertThat(group.sold()).isEqualTo(Exact.HUNDRED);
        // (30 × 8 + 20 × 6) ÷ 50
        assertThat(group.thresholds().margin()).contains(Money.of("7.2"));
        assertThat(group.thresholds().totalMargin()).contains(Money.of("180"));
        ClassedDrink drink = group.drinks().get(2);
        assertThat(drink.popularity().orElseThrow().mixPercent()).isEqualTo(Exact.of(50));
        assertThat(drink.classes()).isEqualTo(ClassedDrink.Classes.NONE);
        assertThat(drink.totalMargin()).isEmpty();
    }

    @Test
    void anUnsoldDrinkIsJudgedByItsMenuPrice() {
        MenuGroup group = group(item("A", 30, 30, "2"), item("Unsold", 0, 30, "1"));
        ClassedDrink unsold = group.drinks().get(1);
        assertThat(group.drinksOnMenu()).isEqualTo(2);
        assertThat(unsold.item().margin()).contains(Money.of("9"));
        assertThat(unsold.classes().marginClass()).contains(MarginClass.PUZZLE);
        assertThat(unsold.totalMargin()).contains(Money.ZERO);
    }

    @Test
    void aDrinkOutsideTheAnalysisIsShownAndChangesNothing() {
        MenuItem out = new MenuItem(
                "Water",
                "G",
                Exact.of(500),
                Money.of("500"),
                Exact.ZERO,
                Optional.empty(),
                Optional.of(Money.of("0.1")),
                Money.ZERO,
                30,
                false,
                new TreeMap<>());
        MenuGroup with = group(item("A", 30, 30, "2"), item("B", 20, 30, "4"), out);
        MenuGroup without = group(item("A", 30, 30, "2"), item("B", 20, 30, "4"));
        assertThat(with.thresholds()).isEqualTo(without.thresholds());
        assertThat(with.drinks().subList(0, 2)).isEqualTo(without.drinks());
        assertThat(with.drinks().get(2).popularity()).isEmpty();
        assertThat(with.drinks().get(2).classes().marginClass()).isEmpty();
    }

    @Test
    void nothingSoldAtAllGivesNoClassAndNoFault() {
        MenuGroup group = group(item("A", 0, 30, "2"), item("B", 0, 30, "4"));
        assertThat(group.thresholds().margin()).isEmpty();
        assertThat(group.thresholds().costPercent()).isEmpty();
        assertThat(group.drinks()).allSatisfy(drink -> {
            assertThat(drink.popularity()).isEmpty();
            assertThat(drink.classes().marginClass()).isEmpty();
            assertThat(drink.classes().costClass()).isEmpty();
        });
    }

    @Test
    void aDrinkSoldWithoutHavingBeenOnTheMenuHasNoPopularity() {
        MenuGroup group = group(item("A", 30, 30, "2"), item("Gone", 3, 0, "2"));
        assertThat(group.drinksOnMenu()).isEqualTo(1);
        assertThat(group.drinks().get(1).popularity()).isEmpty();
        assertThat(group.drinks().get(1).classes().marginClass()).isEmpty();
        assertThat(group.drinks().get(0).popularity().orElseThrow().percent()).isEqualTo(Exact.HUNDRED);
    }

    @Test
    void labourMovesADrinkToAnotherClass() {
        MenuItem quick = labour(item("Quick", 50, 30, "3"), "0.5");
        MenuItem slow = labour(item("Slow", 50, 30, "2"), "4");
        List<ClassedDrink> drinks = MenuAnalysis.analyse(
                        List.of(quick, slow), new MenuRules(Exact.of(70), Exact.of(30), true))
                .get(0)
                .drinks();
        assertThat(drinks.get(0).classes().marginClass()).contains(MarginClass.PLOWHORSE);
        assertThat(drinks.get(0).classes().marginClassAfterLabour()).contains(MarginClass.STAR);
        assertThat(drinks.get(1).classes().marginClass()).contains(MarginClass.STAR);
        assertThat(drinks.get(1).classes().marginClassAfterLabour()).contains(MarginClass.PLOWHORSE);
    }

    @Test
    void theMethodsDisagreeWhereOneSaysBestAndAnotherWorst() {
        // dear to make and dear to buy: a star by margin, but below the goal value of the cheap ones
        MenuGroup group = MenuAnalysis.analyse(
                        List.of(priced("Dear", 100, "30", "18"), priced("Cheap", 100, "10", "1")), MenuRules.STANDARD)
                .get(0);
        ClassedDrink dear = group.drinks().get(0);
        assertThat(dear.classes().marginClass()).contains(MarginClass.STAR);
        assertThat(dear.classes().meetsGoal()).contains(false);
        assertThat(dear.classes().disagree()).isTrue();
    }

    /** Shares and their sums are exact whatever the counts. */
    @Property(tries = 200)
    void sharesAddUpToOneHundred(@ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 997) Integer> sold) {
        MenuItem[] items = new MenuItem[sold.size()];
        for (int i = 0; i < items.length; i++) {
            items[i] = item("D" + i, sold.get(i), 1 + i * 3, "2");
        }
        MenuGroup group = group(items);
        assertThat(group.drinks().stream()
                        .map(drink -> drink.popularity().orElseThrow().percent())
                        .reduce(Exact.ZERO, Exact::plus))
                .isEqualTo(Exact.HUNDRED);
        assertThat(group.drinks().stream().filter(d -> d.classes().popular().orElseThrow()))
                .isNotEmpty();
    }

    static MenuItem item(String name, int sold, int days, String cost) {
        return new MenuItem(
                name,
                "G",
                Exact.of(sold),
                Money.of("10").times(Exact.of(sold)),
                Exact.ZERO,
                Optional.of(Money.of("10")),
                Optional.of(Money.of(cost)),
                Money.ZERO,
                days,
                true,
                new TreeMap<>());
    }

    private static MenuItem priced(String name, int sold, String price, String cost) {
        return new MenuItem(
                name,
                "G",
                Exact.of(sold),
                Money.of(price).times(Exact.of(sold)),
                Exact.ZERO,
                Optional.of(Money.of(price)),
                Optional.of(Money.of(cost)),
                Money.ZERO,
                30,
                true,
                new TreeMap<>());
    }

    private static MenuItem labour(MenuItem item, String labour) {
        return new MenuItem(
                item.drink(),
                item.group(),
                item.sold(),
                item.netSales(),
                item.complimentary(),
                item.netMenuPrice(),
                item.cost(),
                Money.of(labour),
                item.daysOnMenu(),
                item.inAnalysis(),
                item.soldByDay());
    }

    private static MenuGroup group(MenuItem... items) {
        return MenuAnalysis.analyse(List.of(items), MenuRules.STANDARD).get(0);
    }
}
