package heeltap.pricing;

import heeltap.quantity.Money;
import java.util.Optional;

/** Drinks whose price no method touches. */
final class Keeping {
    private Keeping() {}

    /** Why the price stays whatever a method says: it is held, or cannot be judged; empty for all others. */
    static Optional<PriceReason> reason(PricedDrink drink, PriceFloor floor) {
        Optional<Money> now = drink.priceNow();
        if (now.isEmpty() || drink.readPerNet().isEmpty()) {
            return Optional.of(PriceReason.of(PriceReason.Kind.NO_PRICE));
        }
        boolean belowLaw = now.get().compareTo(floor.legal()) < 0;
        if (drink.held()) {
            return Optional.of(
                    belowLaw
                            ? PriceReason.of(
                                    PriceReason.Kind.HELD_BELOW_LEGAL,
                                    floor.legal().amount())
                            : PriceReason.of(PriceReason.Kind.HELD));
        }
        return drink.cost().isEmpty() && !belowLaw
                ? Optional.of(PriceReason.of(PriceReason.Kind.NO_COST))
                : Optional.empty();
    }
}
