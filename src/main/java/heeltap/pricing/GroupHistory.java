package heeltap.pricing;

import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** The months of one group as arrays [month][drink]; a drink not on the menu in a month has exposure 0. */
final class GroupHistory {
    /** A month's weight against that of the month after: an assumption. */
    private static final double REMEMBERED = 0.93;

    final List<String> drinks;
    final double[][] price;
    final double[][] sold;
    /** Days on the menu over the most days of any drink in the month. */
    final double[][] exposure;
    /** Most days of any drink, by month. */
    final double[] days;
    /** What a serve of the month counts in the shares: tastes drift, so older months say less. */
    final double[] weight;

    private GroupHistory(List<String> drinks, SortedMap<YearMonth, List<DrinkMonth>> months) {
        this.drinks = drinks;
        int n = months.size();
        price = new double[n][drinks.size()];
        sold = new double[n][drinks.size()];
        exposure = new double[n][drinks.size()];
        days = new double[n];
        weight = new double[n];
        Map<String, Integer> index = new LinkedHashMap<>();
        drinks.forEach(drink -> index.put(drink, index.size()));
        int t = 0;
        for (Map.Entry<YearMonth, List<DrinkMonth>> entry : months.entrySet()) {
            double age = (double) entry.getKey().until(months.lastKey(), ChronoUnit.MONTHS);
            weight[t] = Math.pow(REMEMBERED, age);
            days[t] = entry.getValue().stream()
                    .mapToInt(DrinkMonth::daysOnMenu)
                    .max()
                    .orElseThrow();
            for (DrinkMonth row : entry.getValue()) {
                int j = index.getOrDefault(row.drink(), -1);
                price[t][j] = row.price().amount().toDouble();
                sold[t][j] = Math.max(0, row.sold().toDouble());
                exposure[t][j] = row.daysOnMenu() / days[t];
            }
            t++;
        }
    }

    /** Rows of one group; rows without a day on the menu or without a price say nothing and are passed over. */
    static GroupHistory of(List<DrinkMonth> rows) {
        TreeMap<YearMonth, List<DrinkMonth>> months = new TreeMap<>();
        Map<String, Boolean> names = new LinkedHashMap<>();
        for (DrinkMonth row : rows) {
            if (row.daysOnMenu() > 0 && row.price().isPositive()) {
                months.computeIfAbsent(row.month(), m -> new ArrayList<>()).add(row);
                names.put(row.drink(), true);
            }
        }
        return new GroupHistory(List.copyOf(names.keySet()), months);
    }

    int months() {
        return days.length;
    }

    int size() {
        return drinks.size();
    }

    double total(int month) {
        double sum = 0;
        for (double n : sold[month]) {
            sum += n;
        }
        return sum;
    }

    /** The price in the last month in which the drink was listed. */
    double lastPrice(int drink) {
        int t = months() - 1;
        while (exposure[t][drink] == 0) {
            t--;
        }
        return price[t][drink];
    }

    /** How many times a price differs from the one in the month before. */
    int priceChanges() {
        int changes = 0;
        for (int j = 0; j < size(); j++) {
            changes += priceChanges(j);
        }
        return changes;
    }

    /** The same of one drink. */
    int priceChanges(int drink) {
        int changes = 0;
        for (int t = 1; t < months(); t++) {
            boolean both = exposure[t][drink] > 0 && exposure[t - 1][drink] > 0;
            if (both && Math.abs(price[t][drink] - price[t - 1][drink]) > 1e-9) {
                changes++;
            }
        }
        return changes;
    }

    /** Average price paid over all months. */
    double averagePrice() {
        double money = 0;
        double units = 0;
        for (int t = 0; t < months(); t++) {
            for (int j = 0; j < size(); j++) {
                // half a serve for every listed drink, so that an unsold group has an average too
                double weight = exposure[t][j] * (sold[t][j] + 0.5);
                money += weight * price[t][j];
                units += weight;
            }
        }
        return money / units;
    }
}
