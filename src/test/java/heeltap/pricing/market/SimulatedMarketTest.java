package heeltap.pricing.market;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Twelve monthly reviews of each of many invented bars, against never changing prices, pricing every drink at target cost
 * percent, and the best prices of one who knows the market; all start from the same prices and keep the same limits. Margins
 * are the expected ones of the market, so that the luck of a month does not decide. The bars, their guests and their costs
 * are constructed.
 */
class SimulatedMarketTest {
    private static final int BARS = 50;
    private static final int FIRST_BAR = BarYear.FIRST_UNTUNED;

    private static final String[] INTERVALS = {
        "a drink's own elasticity", "the same, in the last review", "a group's elasticity",
        "a drink's change of margin", "a group's change of margin", "a drink's units"
    };

    @Test
    void suggestionsBeatSimpleRules() {
        List<BarYear> years = IntStream.range(FIRST_BAR, FIRST_BAR + BARS)
                .parallel()
                .mapToObj(BarYear::of)
                .toList();
        double gain = 0;
        double possible = 0;
        int beaten = 0;
        int[][] covered = new int[INTERVALS.length][2];
        for (BarYear year : years) {
            gain += year.suggested / year.never - 1;
            possible += year.informed / year.never - 1;
            beaten += year.beatsSimpleRules() ? 1 : 0;
            for (int k = 0; k < covered.length; k++) {
                covered[k][0] += year.covered[k][0];
                covered[k][1] += year.covered[k][1];
            }
        }
        System.out.println(table(years, gain, possible, beaten, covered));
        assertThat(beaten).as("bars where both simple rules are beaten").isGreaterThanOrEqualTo(BARS * 9 / 10);
        assertThat(gain / possible).as("share of the possible gain").isGreaterThanOrEqualTo(0.6);
        for (int k = 0; k < covered.length; k++) {
            assertThat(100.0 * covered[k][0] / covered[k][1]).as(INTERVALS[k]).isBetween(70.0, 90.0);
        }
    }

    private static String table(List<BarYear> years, double gain, double possible, int beaten, int[][] covered) {
        StringBuilder table = new StringBuilder(String.format(
                Locale.ROOT,
                "%4s %9s %9s %9s %9s %8s%n",
                "bar",
                "never",
                "target",
                "suggested",
                "informed",
                "taken %"));
        for (int b = 0; b < years.size(); b++) {
            BarYear year = years.get(b);
            table.append(String.format(
                    Locale.ROOT,
                    "%4d %9.0f %9.0f %9.0f %9.0f %8.1f%n",
                    b + 1,
                    year.never,
                    year.target,
                    year.suggested,
                    year.informed,
                    100 * (year.suggested - year.never) / (year.informed - year.never)));
        }
        table.append(String.format(
                Locale.ROOT,
                "both simple rules beaten in %.0f %% of %d bars; gain %.2f %% of %.2f %% possible: %.0f %% taken%n",
                100.0 * beaten / years.size(),
                years.size(),
                100 * gain / years.size(),
                100 * possible / years.size(),
                100 * gain / possible));
        for (int k = 0; k < covered.length; k++) {
            table.append(String.format(
                    Locale.ROOT,
                    "80 %% intervals of %s hold the truth in %.1f %% of %d%n",
                    INTERVALS[k],
                    100.0 * covered[k][0] / covered[k][1],
                    covered[k][1]));
        }
        return table.toString();
    }
}
