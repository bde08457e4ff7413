package heeltap.menu;

import heeltap.quantity.Exact;
import java.util.List;
import java.util.Optional;

/**
 * How sure the classes of one group are.
 *
 * @param group name
 * @param overdispersion how many times the counts vary more than if every serve were ordered on its own, at least 1
 * @param source what that factor rests on
 * @param drinks one for each drink of the group, in its order
 */
public record GroupCertainty(String group, double overdispersion, Source source, List<DrinkCertainty> drinks) {
    /** What the overdispersion rests on. */
    public enum Source {
        /** Estimated from the counts of the group's days, or of its weeks where sales are dated by week. */
        DATED_COUNTS,
        /** The sales carry no dates, or too few: an assumption, since orders come in parties. */
        ASSUMED
    }

    /**
     * @param drink name
     * @param percent chance that a repeat of the month puts it in the same margin class; empty for a drink without one
     */
    public record DrinkCertainty(String drink, Optional<Exact> percent) {
        private static final Exact LINE = Exact.of(80);

        /** Below 80 %: on the line between two classes, so wait or gather more rather than act. */
        public boolean onTheLine() {
            return percent.filter(p -> p.isLessThan(LINE)).isPresent();
        }
    }
}
