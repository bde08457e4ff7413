package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;
import java.util.Optional;

/** Prices at a target cost percent, as far as one review may go and the steps of the menu's prices allow. */
public final class TargetCostPricing {
    private TargetCostPricing() {}

    /** One suggestion for each drink, in the order given. */
    public static List<PriceSuggestion> suggest(List<PricedDrink> drinks, PricingRules rules) {
        return drinks.stream().map(drink -> suggest(drink, rules)).toList();
    }

    private static PriceSuggestion suggest(PricedDrink drink, PricingRules rules) {
        PriceFloor floor = PriceFloor.of(drink, rules);
        Optional<PriceReason> keep = Keeping.reason(drink, floor);
        if (keep.isPresent()) {
            return PriceSuggestion.of(drink, rules, floor, drink.priceNow(), keep.get());
        }
        Money now = drink.priceNow().orElseThrow();
        AllowedPrices allowed = AllowedPrices.of(now, floor, rules);
        Choice choice = drink.cost()
                .filter(cost -> !allowed.isForced())
                .map(cost -> towardsTarget(drink, now, allowed, floor, rules))
                .orElseGet(() -> atLaw(allowed, floor));
        return PriceSuggestion.of(drink, rules, floor, Optional.of(choice.price()), choice.reason());
    }

    private record Choice(Money price, PriceReason reason) {}

    private static Choice atLaw(AllowedPrices allowed, PriceFloor floor) {
        return new Choice(
                allowed.prices().get(0),
                PriceReason.of(PriceReason.Kind.LEGAL_FLOOR, floor.legal().amount()));
    }

    private static Choice towardsTarget(
            PricedDrink drink, Money now, AllowedPrices allowed, PriceFloor floor, PricingRules rules) {
        Exact largest = rules.largestChangePercent();
        if (allowed.high().compareTo(floor.price()) < 0) {
            return new Choice(
                    now,
                    PriceReason.of(
                            PriceReason.Kind.COST_OUT_OF_REACH, floor.price().amount(), largest));
        }
        Money target = PriceMethods.atCostPercent(drink.cost().orElseThrow(), drink.targetCostPercent())
                .times(drink.readPerNet().orElseThrow());
        Money aim = target.max(allowed.low()).min(allowed.high());
        boolean inReach = aim.equals(target);
        Money price = PriceGrid.nearest(allowed.prices(), aim).orElse(now);
        if (now.compareTo(floor.legal()) < 0) {
            // the law asks for a change; the target may ask for more
            return price.equals(allowed.prices().get(0))
                    ? atLaw(allowed, floor)
                    : new Choice(price, moved(drink, inReach, largest));
        }
        boolean nearer = price.minus(target).abs().compareTo(now.minus(target).abs()) < 0;
        return nearer
                ? new Choice(price, moved(drink, inReach, largest))
                : new Choice(now, kept(drink, inReach && !allowed.prices().isEmpty(), largest));
    }

    private static PriceReason moved(PricedDrink drink, boolean inReach, Exact largest) {
        Exact costNow = drink.costPercentNow().orElseThrow();
        return inReach
                ? PriceReason.of(PriceReason.Kind.TO_TARGET, costNow, drink.targetCostPercent())
                : PriceReason.of(PriceReason.Kind.TOWARDS_TARGET, costNow, drink.targetCostPercent(), largest);
    }

    /** Kept: the target is met as well as the grid can, or the next step towards it goes too far. */
    private static PriceReason kept(PricedDrink drink, boolean inReach, Exact largest) {
        return inReach
                ? PriceReason.of(
                        PriceReason.Kind.AT_TARGET, drink.costPercentNow().orElseThrow(), drink.targetCostPercent())
                : PriceReason.of(PriceReason.Kind.STEP_TOO_WIDE, largest);
    }
}
