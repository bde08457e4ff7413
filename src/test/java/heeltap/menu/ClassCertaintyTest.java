package heeltap.menu;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class ClassCertaintyTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 9, 1);

    @Test
    void manySalesFarFromTheCutsAreSureAndOneOnTheCutIsEven() {
        MenuGroup group = analyse(List.of(
                item("Sure", 4000, "2", new TreeMap<>()),
                item("Also", 4000, "3", new TreeMap<>()),
                item("Edge", 2400, "2", new TreeMap<>()),
                item("Low", 100, "3", new TreeMap<>())));
        GroupCertainty certainty = ClassCertainty.of(group, MenuRules.STANDARD);
        assertThat(certainty.source()).isEqualTo(GroupCertainty.Source.ASSUMED);
        assertThat(percent(certainty, 0)).isEqualTo(100.0);
        assertThat(certainty.drinks().get(0).onTheLine()).isFalse();
        // 2,400 of 10,500 against 17.5 %
        assertThat(percent(certainty, 2)).isGreaterThan(99);
        MenuGroup tie = analyse(List.of(
                item("A", 4075, "2", new TreeMap<>()),
                item("B", 4075, "3", new TreeMap<>()),
                item("Edge", 1850, "2", new TreeMap<>()),
                item("Low", 571, "3", new TreeMap<>())));
        GroupCertainty even = ClassCertainty.of(tie, MenuRules.STANDARD);
        assertThat(tie.drinks().get(2).popularity().orElseThrow().percent().toDouble())
                .isCloseTo(17.5, within(0.01));
        assertThat(percent(even, 2)).isBetween(45.0, 55.0);
        assertThat(even.drinks().get(2).onTheLine()).isTrue();
    }

    @Test
    void sameInputSameFigure() {
        MenuGroup group = analyse(List.of(item("A", 40, "2", new TreeMap<>()), item("B", 25, "3", new TreeMap<>())));
        assertThat(ClassCertainty.of(group, MenuRules.STANDARD))
                .isEqualTo(ClassCertainty.of(group, MenuRules.STANDARD));
    }

    @Test
    void aDrinkWithoutClassHasNoCertainty() {
        MenuItem unknown = new MenuItem(
                "Unknown",
                "G",
                Exact.of(50),
                Money.of("500"),
                Exact.ZERO,
                Optional.empty(),
                Optional.empty(),
                Money.ZERO,
                30,
                true,
                new TreeMap<>());
        GroupCertainty certainty =
                ClassCertainty.of(analyse(List.of(item("A", 40, "2", new TreeMap<>()), unknown)), MenuRules.STANDARD);
        assertThat(certainty.drinks().get(1).percent()).isEmpty();
        assertThat(certainty.drinks().get(1).onTheLine()).isFalse();
    }

    @Test
    void partiesShowInTheDailyCounts() {
        // single orders vary as single orders; parties of four order the same drink, so counts vary four times as much
        assertThat(ClassCertainty.of(analyse(market(1, 1, 6)), MenuRules.STANDARD)
                        .overdispersion())
                .isBetween(1.0, 1.25);
        GroupCertainty parties = ClassCertainty.of(analyse(market(1, 4, 6)), MenuRules.STANDARD);
        assertThat(parties.overdispersion()).isBetween(3.2, 4.8);
        assertThat(parties.source()).isEqualTo(GroupCertainty.Source.DATED_COUNTS);
    }

    /** Over many bars the chance stated is the frequency met, counted in a second month drawn from the same market. */
    @Test
    void theChanceStatedIsTheFrequencyMet() {
        double stated = 0;
        double met = 0;
        double statedLow = 0;
        double metLow = 0;
        int low = 0;
        int all = 0;
        for (int bar = 0; bar < 150; bar++) {
            int party = 1 + bar % 3;
            MenuGroup first = analyse(market(2 * bar, party, 8));
            MenuGroup again = analyse(market(-2 * bar - 1, party, 8));
            GroupCertainty certainty = ClassCertainty.of(first, MenuRules.STANDARD);
            for (int i = 0; i < first.drinks().size(); i++) {
                double chance = percent(certainty, i) / 100;
                boolean same = first.drinks()
                        .get(i)
                        .classes()
                        .marginClass()
                        .equals(again.drinks().get(i).classes().marginClass());
                stated += chance;
                met += same ? 1 : 0;
                all++;
                if (certainty.drinks().get(i).onTheLine()) {
                    statedLow += chance;
                    metLow += same ? 1 : 0;
                    low++;
                }
            }
        }
        assertThat(low).isGreaterThan(200);
        assertThat(met / all).isCloseTo(stated / all, within(0.03));
        assertThat(metLow / low).isCloseTo(statedLow / low, within(0.07));
    }

    /** A month of a market: weights and margins by the bar, orders by the seed; a negative seed is the same bar again. */
    private static List<MenuItem> market(int seed, int party, int drinks) {
        SplittableRandom bar = new SplittableRandom(seed < 0 ? -seed - 1 : seed);
        SplittableRandom random = new SplittableRandom(7_000_003L * seed + 11);
        double[] weights = new double[drinks];
        List<String> costs = new ArrayList<>();
        double sum = 0;
        for (int i = 0; i < drinks; i++) {
            weights[i] = 0.3 + bar.nextDouble();
            sum += weights[i];
            costs.add(Integer.toString(1 + bar.nextInt(5)));
        }
        int[][] counts = new int[drinks][30];
        for (int day = 0; day < 30; day++) {
            int orders = (8 + random.nextInt(12)) / party;
            for (int order = 0; order < orders; order++) {
                double u = random.nextDouble() * sum;
                int i = 0;
                while (i < drinks - 1 && u > weights[i]) {
                    u -= weights[i++];
                }
                counts[i][day] += party;
            }
        }
        List<MenuItem> items = new ArrayList<>();
        for (int i = 0; i < drinks; i++) {
            TreeMap<LocalDate, Exact> days = new TreeMap<>();
            int total = 0;
            for (int day = 0; day < 30; day++) {
                days.put(FIRST.plusDays(day), Exact.of(counts[i][day]));
                total += counts[i][day];
            }
            items.add(item("D" + i, total, costs.get(i), days));
        }
        return items;
    }

    private static double percent(GroupCertainty certainty, int drink) {
        return certainty.drinks().get(drink).percent().orElseThrow().toDouble();
    }

    private static MenuGroup analyse(List<MenuItem> items) {
        return MenuAnalysis.analyse(items, MenuRules.STANDARD).get(0);
    }

    private static MenuItem item(String name, int sold, String cost, SortedMap<LocalDate, Exact> days) {
        return new MenuItem(
                name,
                "G",
                Exact.of(sold),
                Money.of("10").times(Exact.of(sold)),
                Exact.ZERO,
                Optional.of(Money.of("10")),
                Optional.of(Money.of(cost)),
                Money.ZERO,
                30,
                true,
                days);
    }
}
