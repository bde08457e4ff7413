package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.record.PublishedElasticity;

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
        /** Published mean of the reported elasticities for the beverage, times {@link #BAR_FACTOR}. */
        REPORTED,
        /** Published mean corrected for publication bias, times {@link #BAR_FACTOR}. */
        CORRECTED
    }

    /** What most of a group's drinks are made of. */
    public enum Beverage {
        BEER("-0.46", "-0.30"),
        WINE("-0.69", "-0.45"),
        SPIRITS("-0.80", "-0.55"),
        /** All alcohol; also used, for want of a better figure, for drinks without. */
        OTHER("-0.51", "-0.50");

        private final String reported;
        private final String corrected;

        Beverage(String reported, String corrected) {
            this.reported = reported;
            this.corrected = corrected;
        }

        /**
         * Mean elasticity of a whole market. Reported: Wagenaar, Salois and Komro 2009, Addiction 104(2), doi
         * 10.1111/j.1360-0443.2008.02438.x. Corrected: Nelson 2013, Health Economics Review 3:17, doi
         * 10.1186/2191-1991-3-17.
         */
        public Exact market(PublishedElasticity means) {
            return Exact.of(means == PublishedElasticity.REPORTED ? reported : corrected);
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

    public static ElasticityPrior published(Beverage beverage, PublishedElasticity means) {
        return new ElasticityPrior(
                beverage.market(means).times(BAR_FACTOR),
                means == PublishedElasticity.REPORTED ? Source.REPORTED : Source.CORRECTED);
    }

    public static ElasticityPrior ofBar(Exact elasticity) {
        return new ElasticityPrior(elasticity, Source.BAR);
    }
}
