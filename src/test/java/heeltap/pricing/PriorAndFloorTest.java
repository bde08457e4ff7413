package heeltap.pricing;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.pricing.ElasticityPrior.Beverage;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.PublishedElasticity;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriorAndFloorTest {
    /**
     * Reported: Wagenaar, Salois and Komro 2009, Addiction 104(2), doi 10.1111/j.1360-0443.2008.02438.x (all alcohol as
     * quoted in Nelson 2013, table 2). Corrected: Nelson 2013, Health Economics Review 3:17, doi 10.1186/2191-1991-3-17.
     */
    @ParameterizedTest
    @CsvSource({"BEER, -0.46, -0.30", "WINE, -0.69, -0.45", "SPIRITS, -0.80, -0.55", "OTHER, -0.51, -0.50"})
    void priorsArePublishedMeansTimesTheBarsFactor(Beverage beverage, String reported, String corrected) {
        ElasticityPrior first = ElasticityPrior.published(beverage, PublishedElasticity.REPORTED);
        ElasticityPrior second = ElasticityPrior.published(beverage, PublishedElasticity.CORRECTED);
        // one bar against a whole market: an assumption, no source
        assertThat(first.mean()).isEqualTo(Exact.of(reported).times(Exact.of("1.5")));
        assertThat(second.mean()).isEqualTo(Exact.of(corrected).times(Exact.of("1.5")));
        assertThat(first.source()).isEqualTo(ElasticityPrior.Source.REPORTED);
        assertThat(second.source()).isEqualTo(ElasticityPrior.Source.CORRECTED);
    }

    /** Its cost asks for 5 against a price of 10: without a law it falls, with one it stays, since nobody knows the floor. */
    @Test
    void withALegalPriceADrinkOfUnknownAlcoholIsNotLowered() {
        PriceSuggestion free = suggest("0", Optional.empty());
        assertThat(free.suggested()).contains(Money.of("9.5"));
        PriceSuggestion unknown = suggest("0.10", Optional.empty());
        assertThat(unknown.suggested()).contains(Money.of("10"));
        assertThat(unknown.floor().price()).isEqualTo(Money.of("10"));
        assertThat(unknown.floor().reason()).contains(PriceFloor.Reason.ALCOHOL_UNKNOWN);
        PriceSuggestion known = suggest("0.10", Optional.of(Exact.of(20)));
        assertThat(known.suggested()).contains(Money.of("9.5"));
        assertThat(known.floor().reason()).contains(PriceFloor.Reason.LEGAL);
    }

    private static PriceSuggestion suggest(String rate, Optional<Exact> grams) {
        PricedDrink drink = new PricedDrink(
                "Drink",
                "Group",
                Optional.of(Money.of("10")),
                Optional.of(Money.of("10")),
                Optional.of(Money.of("1")),
                Money.ZERO,
                Exact.of(20),
                grams,
                false);
        PricingRules rules = new PricingRules(
                PriceGrid.step("0.50"), Exact.of(8), Money.of(rate), Optional.empty(), Optional.empty());
        return TargetCostPricing.suggest(List.of(drink), rules).get(0);
    }
}
