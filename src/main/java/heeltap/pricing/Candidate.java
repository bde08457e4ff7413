package heeltap.pricing;

import heeltap.quantity.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One drink in the search for prices.
 *
 * @param drink as given
 * @param floor lowest price
 * @param keep why its price stays in any case; empty where it may change
 * @param modelled whether demand covers it
 * @param allowed prices to choose among, rising; the present one among them unless the law forbids it
 * @param start index of the present price, or of the lowest the law allows
 */
record Candidate(
        EarningDrink drink,
        PriceFloor floor,
        Optional<PriceReason> keep,
        boolean modelled,
        List<Money> allowed,
        int start) {
    static Candidate of(EarningDrink drink, GroupHistory history, EarningRules rules) {
        PricedDrink priced = drink.priced();
        PriceFloor floor = PriceFloor.of(priced, rules.pricing());
        boolean listed = history.drinks.contains(priced.drink());
        boolean modelled = drink.farPrice().isEmpty()
                && listed
                && priced.readPerNet().isPresent()
                && priced.cost().isPresent();
        Optional<PriceReason> keep = drink.farPrice()
                .map(paid -> PriceReason.of(PriceReason.Kind.PRICE_FAR, paid.amount()))
                .or(() -> Keeping.reason(priced, floor))
                .or(() -> listed ? Optional.empty() : Optional.of(PriceReason.of(PriceReason.Kind.NEVER_LISTED)));
        if (priced.priceNow().isEmpty()) {
            return new Candidate(drink, floor, keep, false, List.of(), 0);
        }
        Money now = priced.priceNow().get();
        if (keep.isPresent() && keep.get().kind() != PriceReason.Kind.NEVER_LISTED) {
            return new Candidate(drink, floor, keep, modelled, List.of(now), 0);
        }
        boolean lawful = now.compareTo(floor.legal()) >= 0;
        AllowedPrices prices = AllowedPrices.of(now, floor, rules.pricing());
        if (!modelled) {
            // the law's floor alone moves a price that cannot be judged
            return lawful
                    ? new Candidate(drink, floor, keep, false, List.of(now), 0)
                    : new Candidate(
                            drink,
                            floor,
                            Optional.empty(),
                            false,
                            prices.prices().subList(0, 1),
                            0);
        }
        List<Money> allowed = new ArrayList<>(prices.prices());
        if (lawful && !allowed.contains(now)) {
            allowed.add(now);
            allowed.sort(null);
        }
        return new Candidate(
                drink, floor, Optional.empty(), true, List.copyOf(allowed), lawful ? allowed.indexOf(now) : 0);
    }

    String name() {
        return drink.priced().drink();
    }

    Money presentPrice() {
        return drink.priced().priceNow().orElseThrow();
    }

    boolean hasPrice() {
        return !allowed.isEmpty();
    }

    /** Whether its price says how wide the group's prices lie: not where the book or the till must be wrong. */
    boolean isInRange() {
        return hasPrice() && presentPrice().isPositive() && drink.farPrice().isEmpty();
    }

    /** Net margin a serve at a price; statistics, not money. */
    double margin(Money price) {
        Money net = drink.priced().netAt(price).orElseThrow();
        return net.minus(drink.priced().cost().orElseThrow()).amount().toDouble();
    }
}
