package heeltap.pricing;

import heeltap.quantity.Exact;

/**
 * What is believed about a group's price elasticity before the bar's own sales speak: its units sold answer a common rise
 * of its prices by one percent with a change of about {@code mean} percent.
 *
 * @param mean negative
 * @param source where it comes from
 */
public record ElasticityPrior(Exact mean, Source source) {
    /** Where a prior comes from. */
    public enum Source {
        /** The bar's own setting. */
        BAR,
        /** Wagenaar, Salois and Komro 2009, mean for the beverage, times {@link #BAR_FACTOR}. */
        PUBLISHED
    }

    /** What most of a group's drinks are made of. */
    public enum Beverage {
        BEER("-0.46"),
        WINE("-0.69"),
        SPIRITS("-0.80"),
        /** All alcohol; also used, for want of a better figure, for drinks without. */
        OTHER("-0.51");

        private final String market;

        Beverage(String market) {
            this.market = market;
        }

        /** Mean of the reported elasticities of a whole market: Addiction 104(2), doi 10.1111/j.1360-0443.2008.02438.x. */
        public Exact market() {
            return Exact.of(market);
        }
    }

    /** Guests of one bar can also go elsewhere, so its group responds more than a market: an assumption. */
    public static final Exact BAR_FACTOR = Exact.of("1.5");

    /** @throws IllegalArgumentException if the elasticity is not negative */
    public ElasticityPrior {
        if (!mean.isNegative()) {
            throw new IllegalArgumentException("a price elasticity must be below 0: " + mean);
        }
    }

    public static ElasticityPrior published(Beverage beverage) {
        return new ElasticityPrior(beverage.market().times(BAR_FACTOR), Source.PUBLISHED);
    }

    public static ElasticityPrior ofBar(Exact elasticity) {
        return new ElasticityPrior(elasticity, Source.BAR);
    }
}
