package heeltap.menu;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Optional;

/**
 * One drink with its figures and its classes. A drink outside the analysis has no popularity and no class; one without
 * cost has popularity but no class.
 *
 * @param item as given
 * @param popularity its share
 * @param totalMargin margin × sold, complimentary serves left out
 * @param marginAfterLabour margin less labour; empty where no labour rate is set
 * @param goalValue by Hayes and Huffman, in currency units
 * @param classes by each published method
 */
public record ClassedDrink(
        MenuItem item,
        Optional<Popularity> popularity,
        Optional<Money> totalMargin,
        Optional<Money> marginAfterLabour,
        Optional<Money> goalValue,
        Classes classes) {
    /**
     * @param mixPercent sold over the group's sold
     * @param percent share of (sold over days on the menu), which is compared and plotted
     * @param ofEqualSharePercent {@code percent} times the number of drinks on the menu: the drink is popular under
     *     every rule up to this one
     * @param index share of sales over share of days shown, 1 where a drink sells as the average one
     */
    public record Popularity(Exact mixPercent, Exact percent, Exact ofEqualSharePercent, Exact index) {}

    /**
     * Ties count on the good side in all of them; each is empty where its threshold or the drink's figure is.
     *
     * @param popular against the popularity rule
     * @param profitable margin at or above the group's weighted average
     * @param marginClass Kasavana and Smith
     * @param costClass Miller
     * @param costMarginClass Pavesic
     * @param meetsGoal Hayes and Huffman: goal value at or above the standard
     * @param marginClassAfterLabour Kasavana and Smith on margins after labour
     */
    public record Classes(
            Optional<Boolean> popular,
            Optional<Boolean> profitable,
            Optional<MarginClass> marginClass,
            Optional<CostClass> costClass,
            Optional<CostMarginClass> costMarginClass,
            Optional<Boolean> meetsGoal,
            Optional<MarginClass> marginClassAfterLabour) {
        static final Classes NONE = new Classes(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());

        /** Whether one method puts the drink in its best class while another puts it in its worst. */
        public boolean disagree() {
            boolean best = marginClass.filter(c -> c == MarginClass.STAR).isPresent()
                    || costClass.filter(c -> c == CostClass.WINNER).isPresent()
                    || costMarginClass.filter(c -> c == CostMarginClass.PRIME).isPresent()
                    || meetsGoal.orElse(false);
            boolean worst = marginClass.filter(c -> c == MarginClass.DOG).isPresent()
                    || costClass.filter(c -> c == CostClass.LOSER).isPresent()
                    || costMarginClass.filter(c -> c == CostMarginClass.PROBLEM).isPresent()
                    || !meetsGoal.orElse(true);
            return best && worst;
        }
    }

    /**
     * Whether its margin class differs between a popularity rule of 60 and one of 100 percent: it is popular under the
     * first and not under the second.
     */
    public boolean hangsOnPopularityRule() {
        return classes.marginClass().isPresent()
                && popularity
                        .map(Popularity::ofEqualSharePercent)
                        .filter(share -> !share.isLessThan(Exact.of(60)) && share.isLessThan(Exact.HUNDRED))
                        .isPresent();
    }
}
