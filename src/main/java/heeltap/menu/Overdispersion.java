package heeltap.menu;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How much more the counts of a group vary from day to day than single independent orders would.
 *
 * <p>Pearson's statistic over its degrees of freedom, {@code φ = Σ (n - Nπ)² / (Nπ) / df}, with the month's mix corrected
 * for the drinks listed on each day (McCullagh and Nelder, Generalized Linear Models, 1989; from memory).
 */
record Overdispersion(double factor, GroupCertainty.Source source) {
    /** Where sales carry no dates; an assumption. */
    static final Overdispersion ASSUMED = new Overdispersion(2, GroupCertainty.Source.ASSUMED);

    private static final double LEAST_DATED = 0.8;
    private static final int LEAST_FREEDOM = 10;

    static Overdispersion of(List<MenuItem> listed) {
        double sold = 0;
        double dated = 0;
        Map<LocalDate, List<Cell>> days = new TreeMap<>();
        for (MenuItem item : listed) {
            sold += count(item);
            double rate = count(item) / item.daysOnMenu();
            for (var day : item.soldByDay().entrySet()) {
                double n = Math.max(0, day.getValue().toDouble());
                dated += n;
                days.computeIfAbsent(day.getKey(), date -> new ArrayList<>()).add(new Cell(n, rate));
            }
        }
        return dated < LEAST_DATED * sold ? ASSUMED : pearson(days.values(), listed.size());
    }

    private static Overdispersion pearson(Iterable<List<Cell>> days, int drinks) {
        double statistic = 0;
        int freedom = 1 - drinks;
        for (List<Cell> day : days) {
            double total = day.stream().mapToDouble(Cell::count).sum();
            double rates = day.stream().mapToDouble(Cell::rate).sum();
            if (total > 0 && rates > 0) {
                freedom--;
                for (Cell cell : day) {
                    double expected = total * cell.rate() / rates;
                    if (expected > 0) {
                        freedom++;
                        statistic += (cell.count() - expected) * (cell.count() - expected) / expected;
                    }
                }
            }
        }
        return freedom < LEAST_FREEDOM
                ? ASSUMED
                : new Overdispersion(Math.max(1, statistic / freedom), GroupCertainty.Source.DATED_COUNTS);
    }

    static double count(MenuItem item) {
        return Math.max(0, item.sold().toDouble());
    }

    private record Cell(double count, double rate) {}
}
