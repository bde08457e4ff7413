package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The suggestions of one group. */
final class GroupPricing {
    private GroupPricing() {}

    static GroupSuggestion suggest(
            String name,
            List<EarningDrink> drinks,
            List<DrinkMonth> months,
            ElasticityPrior prior,
            EarningRules rules) {
        GroupHistory history = GroupHistory.of(months);
        List<Candidate> all = drinks.stream()
                .map(drink -> Candidate.of(drink, history, rules))
                .toList();
        List<Candidate> modelled = all.stream().filter(Candidate::modelled).toList();
        if (modelled.isEmpty()) {
            List<EarningSuggestion> kept =
                    all.stream().map(c -> Advice.unmodelled(c, rules)).toList();
            return new GroupSuggestion(
                    name,
                    kept,
                    prior,
                    history.priceChanges(),
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }
        double[] now = modelled.stream()
                .mapToDouble(c -> c.presentPrice().amount().toDouble())
                .toArray();
        List<String> names = modelled.stream().map(Candidate::name).toList();
        List<String> staying = all.stream()
                .filter(c -> !c.modelled() && history.drinks.contains(c.name()))
                .map(Candidate::name)
                .toList();
        DemandModel demand = DemandModel.of(history, prior, names, now, staying);
        PriceLimits limits = limits(all, modelled, now, sold(history, names), rules);
        PricePlan plan = PricePlan.of(modelled, demand, limits, rules);
        Advice advice = new Advice(modelled, demand, plan, limits, range(all), rules);
        List<EarningSuggestion> suggestions = all.stream()
                .map(c -> c.modelled() ? advice.of(modelled.indexOf(c)) : Advice.unmodelled(c, rules))
                .toList();
        double[] group = Arrays.stream(demand.draws)
                .mapToDouble(GroupDemand::groupElasticity)
                .toArray();
        return new GroupSuggestion(
                name,
                suggestions,
                prior,
                history.priceChanges(),
                Optional.of(demand.point),
                names,
                Optional.of(Interval.of(demand.point.groupElasticity(), group)),
                Optional.of(averageChange(suggestions, sold(history, names), modelled)),
                Optional.of(plan.groupChange().about(total(suggestions))),
                plan.isChange() ? Optional.of(plan.groupChance()) : Optional.empty());
    }

    /** Units sold in the last month, by which changes of price are weighted; one each where none was sold. */
    private static double[] sold(GroupHistory history, List<String> names) {
        int last = history.months() - 1;
        double[] sold = names.stream()
                .mapToDouble(name -> history.sold[last][history.drinks.indexOf(name)])
                .toArray();
        if (Arrays.stream(sold).sum() <= 0) {
            Arrays.fill(sold, 1);
        }
        return sold;
    }

    /** The change of margin of all drinks: exactly the sum of the rows that are printed. */
    private static Exact total(List<EarningSuggestion> suggestions) {
        return suggestions.stream()
                .flatMap(suggestion -> suggestion.demand().stream())
                .map(expected -> expected.marginChange().value())
                .reduce(Exact.ZERO, Exact::plus);
    }

    /** Lowest and highest price of the whole group, far ones aside, and the widest opening by the principle. */
    private static double[] range(List<Candidate> all) {
        double[] prices = all.stream()
                .filter(Candidate::isInRange)
                .mapToDouble(c -> c.presentPrice().amount().toDouble())
                .toArray();
        double lowest = Arrays.stream(prices).min().orElse(1);
        double highest = Arrays.stream(prices).max().orElse(1);
        return new double[] {lowest, highest, PriceRange.widest(prices.length).toDouble()};
    }

    private static PriceLimits limits(
            List<Candidate> all, List<Candidate> modelled, double[] now, double[] units, EarningRules rules) {
        double lowestOther = Double.POSITIVE_INFINITY;
        double highestOther = 0;
        for (Candidate other : all) {
            if (!other.modelled() && other.isInRange()) {
                double price = other.allowed().get(0).amount().toDouble();
                lowestOther = Math.min(lowestOther, price);
                highestOther = Math.max(highestOther, price);
            }
        }
        double lowest = lowestOther;
        double highest = highestOther;
        double rise = 0;
        double sold = 0;
        for (int j = 0; j < now.length; j++) {
            double start = modelled.get(j)
                    .allowed()
                    .get(modelled.get(j).start())
                    .amount()
                    .toDouble();
            lowest = Math.min(lowest, start);
            highest = Math.max(highest, start);
            rise += units[j] * (start / now[j] - 1);
            sold += units[j];
        }
        double cap = rules.largestAverageRisePercent()
                .map(percent -> percent.percent().toDouble())
                .orElse(Double.POSITIVE_INFINITY);
        double widest = range(all)[2];
        // what the law forces, or what is out of range already, is no reason to forbid everything else
        return new PriceLimits(
                now,
                units,
                Math.max(cap, sold > 0 ? rise / sold : 0),
                lowestOther,
                highestOther,
                Math.max(widest, highest / lowest));
    }

    private static Exact averageChange(List<EarningSuggestion> suggestions, double[] units, List<Candidate> modelled) {
        double change = 0;
        double sold = 0;
        for (EarningSuggestion suggestion : suggestions) {
            for (int j = 0; j < units.length; j++) {
                if (modelled.get(j).drink().priced().equals(suggestion.price().drink())) {
                    change += units[j]
                            * suggestion
                                    .price()
                                    .changePercent()
                                    .orElse(Exact.ZERO)
                                    .toDouble();
                    sold += units[j];
                }
            }
        }
        return sold > 0 ? Exact.ofPhysical(change / sold) : Exact.ZERO;
    }

    /** A double as money, for figures of demand. */
    static Money money(double amount) {
        return new Money(Exact.ofPhysical(amount));
    }
}
