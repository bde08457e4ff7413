package heeltap.stock;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Constructed; par + expected use - on hand in whole packs is common practice, no source. */
class ReorderTest {
    @ParameterizedTest
    @CsvSource({
        // par, on hand, expected use, pack, wanted, packs, quantity
        "1400,700,2800,700,3500,5,3500",
        "1400,701,2800,700,3499,5,3500",
        "1400,699,2800,700,3501,6,4200",
        "1400,4200,2800,700,0,0,0",
        "1400,9000,2800,700,0,0,0",
        "0,0,0.5,1,0.5,1,1",
        "1400,700,2800,,3500,,3500"
    })
    void bringsWhatIsWantedToWholePacks(
            String par,
            String onHand,
            String expected,
            @Nullable String pack,
            String wanted,
            @Nullable String packs,
            String quantity) {
        Reorder order = Reorder.of(
                Exact.of(par),
                Exact.of(onHand),
                Exact.of(expected),
                Optional.ofNullable(pack).map(Exact::of));
        assertThat(order)
                .isEqualTo(
                        new Reorder(Exact.of(wanted), Optional.ofNullable(packs).map(Exact::of), Exact.of(quantity)));
    }
}
