package heeltap.stock;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Pack;
import heeltap.quantity.Packs;
import heeltap.quantity.Units;
import heeltap.source.Place;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CountingTest {
    private static final Place PLACE = Place.of("2026-10/stock.csv").withRow(4);
    private static final Countable GIN = new Countable(
            "Dry gin",
            Measure.ML,
            Optional.of(Amount.of("700", Measure.ML)),
            true,
            Containers.of(List.of(), Packs.parse("6 x 70cl", Measure.ML).orElseThrow()),
            Optional.empty(),
            Optional.of(Exact.of("0.95")),
            Optional.empty(),
            Optional.of(Exact.of("1200")),
            Optional.of(Exact.of("500")));
    private static final Countable LEMON = new Countable(
            "Lemon",
            Measure.EACH,
            Optional.empty(),
            false,
            Containers.NONE,
            Optional.empty(),
            Optional.empty(),
            Optional.of(Exact.of("120")),
            Optional.empty(),
            Optional.empty());

    @ParameterizedTest
    @CsvSource({
        "3.4,bottle,2380",
        "3.4,,2380",
        "2,Cases,8400",
        "1.5,l,1500",
        "70,cl,700",
        "950,g,1000",
        "850,weighed g,350",
        "500,weighed g,0",
        "1200,weighed g,700"
    })
    void turnsCountsIntoMillilitres(String count, String unit, String ml) {
        Counting.Counted counted =
                Counting.toBase(GIN, Exact.of(count), unit == null ? "" : unit, PLACE, Units.standard());
        assertThat(counted.amount()).contains(Exact.of(ml));
    }

    @ParameterizedTest
    @CsvSource({"12,,12", "12,each,12", "6,pieces,6", "1.2,kg,10"})
    void countsPieces(String count, String unit, String pieces) {
        Counting.Counted counted =
                Counting.toBase(LEMON, Exact.of(count), unit == null ? "" : unit, PLACE, Units.standard());
        assertThat(counted.amount()).contains(Exact.of(pieces));
    }

    @ParameterizedTest
    @CsvSource({
        "-1,bottle,COUNT_IMPOSSIBLE",
        "1201,weighed g,COUNT_IMPOSSIBLE",
        "499,weighed g,COUNT_IMPOSSIBLE",
        "2,firkin,UNIT_UNKNOWN",
        "2,each,UNIT_UNKNOWN"
    })
    void refusesWhatCannotBe(String count, String unit, String kind) {
        Counting.Counted counted = Counting.toBase(GIN, Exact.of(count), unit, PLACE, Units.standard());
        assertThat(counted.amount()).isEmpty();
        assertThat(counted.problem().orElseThrow().kind().name()).isEqualTo(kind);
        assertThat(counted.problem().orElseThrow().place()).isEqualTo(PLACE);
    }

    @Test
    void aCaseOfUnknownSizeIsRefused() {
        assertThat(Counting.toBase(LEMON, Exact.ONE, "case", PLACE, Units.standard())
                        .problem()
                        .orElseThrow()
                        .reason())
                .isEqualTo("Nothing says how much one case of Lemon holds.");
    }

    /** The last pack that is of the kind counts, newest last; the list pack is 24 x 20cl. */
    @ParameterizedTest
    @CsvSource({
        "50 L keg;1 l,keg,50000",
        "50 L keg;24 x 33cl,keg,50000",
        "30 l;1 l,keg,30000",
        "12 x 33cl;50 L keg,case,3960",
        "12 x 33cl;50 L keg,bottle,330",
        "50 L keg,case,4800",
        "1 l,keg,"
    })
    void aContainerIsTheLastOfItsKind(String bought, String unit, @Nullable String ml) {
        List<Pack> packs = Stream.of(bought.split(";", -1))
                .map(text -> Packs.parse(text, Measure.ML).orElseThrow())
                .toList();
        Containers containers =
                Containers.of(packs, Packs.parse("24 x 20cl", Measure.ML).orElseThrow());
        Countable lager = new Countable(
                "Lager",
                Measure.ML,
                containers.bottle(),
                false,
                containers,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        assertThat(Counting.toBase(lager, Exact.ONE, unit, PLACE, Units.standard())
                        .amount())
                .isEqualTo(Optional.ofNullable(ml).map(Exact::of));
    }
}
