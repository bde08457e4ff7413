package heeltap.pricing;

import heeltap.pricing.PriceReason.Kind;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;
import java.util.Optional;

/** Why a price that might change stays: a limit that stands in the way of one that pays, else what the others lack. */
final class KeepReason {
    private final Candidate candidate;
    private final int drink;
    private final PriceTrial trial;
    private final PriceLimits limits;
    private final EarningRules rules;

    KeepReason(Candidate candidate, int drink, PriceTrial trial, PriceLimits limits, EarningRules rules) {
        this.candidate = candidate;
        this.drink = drink;
        this.trial = trial;
        this.limits = limits;
        this.rules = rules;
    }

    /** @param refused why a change that would help was taken back, if one was */
    PriceReason reason(Optional<PriceReason> refused) {
        Exact largest = rules.pricing().largestChangePercent();
        Money now = candidate.presentPrice();
        if (candidate.allowed().size() <= 1) {
            Money floor = candidate.floor().price();
            return floor.compareTo(now) > 0
                    ? PriceReason.of(Kind.COST_OUT_OF_REACH, floor.amount(), largest)
                    : PriceReason.of(Kind.STEP_TOO_WIDE, largest);
        }
        return limit().or(() -> trial.best(drink)
                        .filter(other -> PriceTrial.helps(trial.effect(drink, now, other, Money.ZERO)))
                        .flatMap(other -> refused.or(() -> lacking(other))))
                .or(this::beyond)
                .orElseGet(() -> PriceReason.of(Kind.NOTHING_BETTER));
    }

    /** The limit of the group in the way of a price that pays. */
    private Optional<PriceReason> limit() {
        for (Money other : candidate.allowed()) {
            double[] prices = trial.with(drink, other);
            boolean rise = limits.risesTooMuch(prices);
            if ((rise || limits.opensTooWide(prices)) && trial.pays(drink, other, Money.ZERO)) {
                return Optional.of(
                        rise
                                ? PriceReason.of(
                                        Kind.AVERAGE_RISE_LIMIT,
                                        rules.largestAverageRisePercent().orElseThrow())
                                : PriceReason.of(Kind.RANGE_LIMIT, Exact.ofPhysical(limits.widest())));
            }
        }
        return Optional.empty();
    }

    private Optional<PriceReason> lacking(Money other) {
        Money now = candidate.presentPrice();
        double gain = trial.effect(drink, now, other, Money.ZERO).gain();
        double chance = trial.chance(drink, now, other, Money.ZERO);
        if (chance < rules.leastChancePercent().percent().toDouble()) {
            return Optional.of(
                    PriceReason.of(Kind.TOO_UNSURE, Exact.ofPhysical(chance * 100), rules.leastChancePercent()));
        }
        return gain < rules.leastGain().amount().toDouble()
                ? Optional.of(PriceReason.of(
                        Kind.TOO_SMALL,
                        Exact.ofPhysical(gain),
                        rules.leastGain().amount()))
                : Optional.empty();
    }

    /** Whether the next price of the grid, past the largest change, would pay where none inside it lies on that side. */
    private Optional<PriceReason> beyond() {
        Money now = candidate.presentPrice();
        List<Money> allowed = candidate.allowed();
        PriceGrid grid = rules.pricing().grid();
        Money next = null;
        if (allowed.get(allowed.size() - 1).equals(now)) {
            next = grid.between(now, now.times(Exact.of(2))).stream()
                    .filter(price -> price.compareTo(now) > 0)
                    .findFirst()
                    .orElse(null);
        } else if (allowed.get(0).equals(now)) {
            next = grid.between(candidate.floor().price(), now).stream()
                    .filter(price -> price.compareTo(now) < 0)
                    .reduce((one, two) -> two)
                    .orElse(null);
        }
        return Optional.ofNullable(next)
                .filter(price -> trial.pays(drink, price, Money.ZERO))
                .map(price -> PriceReason.of(
                        Kind.BEYOND_LARGEST_CHANGE, rules.pricing().largestChangePercent()));
    }
}
