package heeltap.pricing;

import heeltap.menu.MarginClass;
import heeltap.pricing.PriceReason.Kind;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Optional;

/** What drives a change of price, true of the drink's own row: where the group gains and the drink does not, that. */
final class ChangeReason {
    private static final Exact NOTABLE_RISE = Exact.of("1.02");

    private final Candidate candidate;
    private final int drink;
    private final PriceTrial trial;
    private final Money price;
    private final EarningSuggestion.Expected expected;

    ChangeReason(Candidate candidate, int drink, PriceTrial trial, Money price, EarningSuggestion.Expected expected) {
        this.candidate = candidate;
        this.drink = drink;
        this.trial = trial;
        this.price = price;
        this.expected = expected;
    }

    /** @param range lowest and highest price of the group, widest opening */
    PriceReason reason(double[] range) {
        Money now = candidate.presentPrice();
        Money legal = candidate.floor().legal();
        if (now.compareTo(legal) < 0 && price.equals(candidate.allowed().get(0))) {
            return PriceReason.of(Kind.LEGAL_FLOOR, legal.amount());
        }
        boolean rise = price.compareTo(now) > 0;
        double paid = now.amount().toDouble();
        if (range[1] > range[2] * range[0] && (rise ? paid <= range[0] : paid >= range[1])) {
            return PriceReason.of(Kind.OUT_OF_RANGE, Exact.ofPhysical(range[1] / range[0]), Exact.ofPhysical(range[2]));
        }
        PriceTrial.Effect effect = trial.effect(drink, now, price, Money.ZERO);
        if (rise && effect.own() < 0 && effect.gain() > 0) {
            return PriceReason.of(Kind.SENDS_GUESTS, Exact.ofPhysical(effect.gain()));
        }
        // other new prices take guests from it: no sentence on its own guests would be true of the row
        if (effect.own() < 0 || expected.marginChange().value().isNegative()) {
            return PriceReason.of(Kind.BESIDE_OTHERS, Exact.ofPhysical(effect.gain()));
        }
        return rise ? ofRise() : PriceReason.of(Kind.BRINGS_GUESTS, unitsPercent());
    }

    private PriceReason ofRise() {
        PricedDrink priced = candidate.drink().priced();
        Money cost = priced.cost().orElseThrow();
        Optional<Money> before =
                candidate.drink().previousCost().filter(old -> cost.compareTo(old.times(NOTABLE_RISE)) >= 0);
        if (before.filter(old -> !wouldRise(cost.minus(old))).isPresent()) {
            return PriceReason.of(Kind.SUPPLIER_UP, before.get().amount(), cost.amount());
        }
        Exact percent = priced.costPercentNow().orElseThrow();
        if (percent.isGreaterThan(priced.targetCostPercent())) {
            return PriceReason.of(Kind.COST_ABOVE_TARGET, percent, priced.targetCostPercent());
        }
        Optional<MarginClass> plowhorse = candidate.drink().marginClass().filter(one -> one == MarginClass.PLOWHORSE);
        return plowhorse.isPresent()
                ? PriceReason.of(
                        Kind.POPULAR_AND_THIN,
                        priced.netPrice().orElseThrow().minus(cost).amount())
                : PriceReason.of(Kind.FEW_LEAVE, unitsPercent());
    }

    /** Whether a higher price would be suggested too if a serve cost so much less. */
    private boolean wouldRise(Money costLess) {
        return candidate.allowed().stream()
                .filter(other -> other.compareTo(candidate.presentPrice()) > 0)
                .anyMatch(other -> trial.pays(drink, other, costLess));
    }

    private Exact unitsPercent() {
        return expected.unitsPercent().orElse(Exact.ZERO);
    }
}
