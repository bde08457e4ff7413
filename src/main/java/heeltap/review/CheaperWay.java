package heeltap.review;

import heeltap.cost.CostLine;
import heeltap.cost.DrinkCost;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.SpecLine;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A line that drives the cost of a drink whose price does not bring it to its target, and a cheaper way for it, if the
 * bar has one: for a person to taste, never automatic.
 *
 * @param drink name
 * @param costPercent at the suggested price
 * @param targetPercent of cost
 * @param line the line as it is
 * @param now the drink as it is
 * @param way empty where there is none
 * @param units serves poured in the month
 */
record CheaperWay(
        String drink,
        Exact costPercent,
        Exact targetPercent,
        CostLine line,
        DrinkCost now,
        Optional<Way> way,
        Exact units) {
    /** What kind of way it is. */
    enum Kind {
        PREPARATION,
        INGREDIENT,
        SMALLER
    }

    /**
     * @param kind of the way
     * @param instead the line that would stand instead
     * @param then the drink with it
     */
    record Way(Kind kind, SpecLine instead, DrinkCost then) {}

    /** The line's part of the drink's cost. */
    Exact sharePercent() {
        Money whole = now.cost().orElseThrow();
        return Optional.ofNullable(line.cost())
                .filter(cost -> whole.isPositive())
                .map(cost -> cost.dividedBy(whole).times(Exact.HUNDRED))
                .orElse(Exact.ZERO);
    }

    Optional<Money> savingAServe() {
        return way.flatMap(one -> one.then().cost())
                .map(then -> now.cost().orElseThrow().minus(then));
    }

    Optional<Money> savingAMonth() {
        return savingAServe().map(saving -> saving.times(units));
    }

    /** Allergens that the drink would have besides. */
    List<String> newAllergens() {
        TreeSet<String> fresh = new TreeSet<>();
        way.ifPresent(one -> fresh.addAll(one.then().allergens()));
        fresh.removeAll(now.allergens());
        return List.copyOf(fresh);
    }
}
