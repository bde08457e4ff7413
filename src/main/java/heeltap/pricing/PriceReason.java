package heeltap.pricing;

import heeltap.quantity.Exact;
import java.util.List;

/**
 * Why a price is suggested or kept: one plain sentence, as a kind with its figures so that they can be printed in any
 * language.
 *
 * @param kind what drives it
 * @param figures as the kind says
 */
public record PriceReason(Kind kind, List<Exact> figures) {
    public PriceReason {
        figures = List.copyOf(figures);
        if (figures.size() != kind.figures) {
            throw new IllegalArgumentException(kind + " takes " + kind.figures + " figures: " + figures);
        }
    }

    static PriceReason of(Kind kind, Exact... figures) {
        return new PriceReason(kind, List.of(figures));
    }

    /** The sentence stands with each kind; {@code {0}} and so on are its figures. */
    public enum Kind {
        HELD("The bar holds this price.", 0),
        /** Lowest legal price. */
        HELD_BELOW_LEGAL("The bar holds this price, but the legal lowest price is {0}.", 1),
        NO_PRICE("There is no price to start from.", 0),
        NO_COST("Its cost is not known.", 0),
        /** Lowest legal price. */
        LEGAL_FLOOR("The legal lowest price is {0}.", 1),
        /** Price at which cost is met, largest change in percent. */
        COST_OUT_OF_REACH("It sells below cost; a price of {0} covers it, which is more than {1} % away.", 2),
        /** Cost percent now, target. */
        AT_TARGET("Cost is {0} % of the price, as near to the target of {1} % as the price steps allow.", 2),
        /** Largest change in percent. */
        STEP_TOO_WIDE("A step of price is wider than the largest change of {0} %.", 1),
        /** Cost percent now, target. */
        TO_TARGET("Cost is {0} % of the price; this brings it to the target of {1} %.", 2),
        /** Cost percent now, target, largest change in percent. */
        TOWARDS_TARGET(
                "Cost is {0} % of the price, the target {1} %; this goes as far as a change of {2} % allows.", 3),
        /** Cost before, cost now. */
        SUPPLIER_UP("Its cost rose from {0} to {1} a serve; at the old cost its price would stay.", 2),
        /** Cost percent now, target. */
        COST_ABOVE_TARGET("Its cost is {0} % of the price, above the target of {1} %, and enough guests stay.", 2),
        /** Margin now. */
        POPULAR_AND_THIN("It is popular and earns only {0} a serve, less than the group's average.", 1),
        /** Highest over lowest price of the group, widest by the principle. */
        OUT_OF_RANGE("The group's dearest drink costs {0} times its cheapest, more than {1} times.", 2),
        /** Change of units in percent. */
        FEW_LEAVE("Most guests stay at this price: units change by {0} %.", 1),
        /** Change of units in percent. */
        BRINGS_GUESTS("A lower price brings enough guests: units change by" + " {0} %.", 1),
        /** Gain of the group a month. */
        SENDS_GUESTS(
                "Enough guests who leave it order drinks of the group that earn more: the group gains {0} a month.", 1),
        /** Gain of the group a month. */
        BESIDE_OTHERS(
                "Beside the group's other new prices this one brings the group {0} more a month than the present one.",
                1),
        /** Largest average rise in percent. */
        AVERAGE_RISE_LIMIT("A price that pays would raise the group's prices by more than {0} % on average.", 1),
        /** Widest opening. */
        RANGE_LIMIT("At a price that pays the group's dearest drink would cost more than {0} times its cheapest.", 1),
        /** Largest change in percent. */
        BEYOND_LARGEST_CHANGE("The next price would pay, but lies further off than the largest change of {0} %.", 1),
        /** What guests paid a serve. */
        PRICE_FAR("Guests paid {0} on average, far from its price in the book: one of both is wrong.", 1),
        NOTHING_BETTER("No allowed price earns more.", 0),
        /** Chance in percent, least chance. */
        TOO_UNSURE("Another price pays with a chance of only {0} %, less than {1} %.", 2),
        /** Expected gain a month, least gain. */
        TOO_SMALL("Another price brings {0} a month, less than {1}.", 2),
        NEVER_LISTED("It has not been on the menu in the months present.", 0);

        private final String sentence;
        private final int figures;

        Kind(String sentence, int figures) {
            this.sentence = sentence;
            this.figures = figures;
        }

        /** In English, with {@code {0}} for its first figure. */
        public String sentence() {
            return sentence;
        }
    }
}
