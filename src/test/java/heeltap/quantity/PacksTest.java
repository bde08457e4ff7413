package heeltap.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PacksTest {
    /** Pack texts as met on trade invoices: common practice; totals from exact factors. */
    @Test
    void readsEverySpellingOfTheTrade() {
        List<CSVRecord> rows = Table.read("pack_notation.csv");
        assertThat(rows).hasSize(31);
        for (CSVRecord row : rows) {
            String text = row.get("text");
            if (text.equals("1.000 ml")) {
                // the row gives two readings; a pack of 1 ml is implausible
                assertThat(total(text, Measure.ML)).isEqualTo(Amount.of("1000", Measure.ML));
                continue;
            }
            if (!row.get("total_ml").isEmpty()) {
                assertClose(text, total(text, Measure.ML), Measure.ML, row.get("total_ml"));
            }
            if (!row.get("total_g").isEmpty()) {
                assertClose(text, total(text, Measure.G), Measure.G, row.get("total_g"));
            }
            assertThat(pack(text, Measure.ML).units()).as(text).isEqualTo(Exact.of(row.get("each")));
        }
    }

    private static void assertClose(String text, Amount found, Measure measure, String printed) {
        BigDecimal value = new BigDecimal(printed);
        Exact half = Exact.of(new BigDecimal("0.5").movePointLeft(value.scale()));
        assertThat(found.measure()).as(text).isEqualTo(measure);
        assertThat(found.value().minus(Exact.of(value)).abs()).as(text).isLessThanOrEqualTo(half);
    }

    /** 27 CFR 4.72 (sizes before 2025 from memory), 5.203; UK and EU specified quantities; the rows carry their source. */
    @Test
    void readsEveryBottleSizeInEverySpelling() {
        List<CSVRecord> rows = Table.read("bottle_sizes.csv");
        assertThat(rows).hasSize(80);
        for (CSVRecord row : rows) {
            Exact ml = Exact.of(row.get("ml"));
            String litres = ml.dividedBy(Exact.of(1000)).toString();
            for (String text : List.of(
                    ml + " ml",
                    ml + "ML",
                    ml.dividedBy(Exact.of(10)) + "cl",
                    litres + "L",
                    litres.replace('.', ',') + " l")) {
                assertThat(total(text, Measure.ML)).as(text).isEqualTo(new Amount(ml, Measure.ML));
            }
        }
    }

    /** 27 CFR 25.156; European kegs common practice. */
    @Test
    void readsEveryKeg() {
        List<CSVRecord> rows = Table.read("kegs.csv");
        assertThat(rows).hasSize(12);
        for (CSVRecord row : rows) {
            Exact litres = total(row.get("keg"), Measure.ML).value().dividedBy(Exact.of(1000));
            assertThat(litres.minus(Exact.of(row.get("litres"))).abs())
                    .as(row.get("keg"))
                    .isLessThanOrEqualTo(Exact.of("0.00005"));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "'0,75 l', 1, 750 ml, ''",
        "750ML, 1, 750 ml, ''",
        "1.75L, 1, 1750 ml, ''",
        "1LTR, 1, 1000 ml, ''",
        "50mL 10 Pk, 10, 50 ml, pk",
        "4 - 4 - 12oz, 16, 354.88235475 ml, ''",
        "case of 40, 40, 1 each, case",
        "40 ct, 40, 1 each, ''",
        "12 pack, 12, 1 each, pack",
        "6-pack, 6, 1 each, pack",
        "pack of 12, 12, 1 each, pack",
        "40/case, 40, 1 each, case",
        "box 100, 100, 1 each, box",
        "2 dozen, 24, 1 each, ''",
        "each, 1, 1 each, ''",
        "5 kg, 1, 5000 g, ''",
        "'2,500 kg', 1, 2500 g, ''",
        "1.000 l, 1, 1000 ml, ''",
        "1 kg bag, 1, 1000 g, bag",
        "1/2 bbl keg, 1, 58673.882652 ml, keg",
        "50 L keg, 1, 50000 ml, keg",
        "Keg 50l, 1, 50000 ml, keg",
        "1/2 gal, 1, 1892.705892 ml, ''",
        "2 1/2 gal, 1, 9463.52946 ml, ''",
        "½ gal, 1, 1892.705892 ml, ''",
        "6 x ½ l, 6, 500 ml, ''",
        "3/4 l, 1, 750 ml, ''",
        "1/2 kg, 1, 500 g, ''",
        "case of 12 x 75cl, 12, 750 ml, case",
        "12 bottles of 75cl, 12, 750 ml, bottles",
        "Kiste 12 Fl. à 0&7 l, 12, 700 ml, kiste",
        "6 bouteilles de 70 cl, 6, 700 ml, bouteilles",
        "6er Pack 0&33 L, 6, 330 ml, er",
        "70cl x 6, 6, 700 ml, ''",
        "750 ml/12, 12, 750 ml, ''",
        "750ml (12), 12, 750 ml, ''",
        "6 × 70 cl (case), 6, 700 ml, case",
        "70cl 40% vol., 1, 700 ml, ''",
        "4x6-pack 330ml, 24, 330 ml, pack",
        "11 imp gal, 1, 50006.99 ml, ''",
        "12 uk fl oz, 1, 340.95675 ml, ''",
        "24 ct 12 oz, 24, 354.88235475 ml, ''",
        "38 lb 115 ct, 115, 149.882696174 g, ''",
        "6/#10, 6, 1 each, #10"
    })
    void understands(String text, String units, String unitSize, String form) {
        Pack pack = pack(text.replace('&', ','), Measure.ML);
        assertThat(pack.units()).isEqualTo(Exact.of(units));
        assertThat(pack.unitSize().toString()).isEqualTo(unitSize);
        assertThat(pack.form()).isEqualTo(form);
        assertThat(pack.text()).isEqualTo(text.replace('&', ','));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|There is no pack text.",
                "12.0Z|\"z\" is no unit or word of a pack. It may be a misprint of oz.",
                "BAG|It does not say how much it holds.",
                "1 case|It does not say how much it holds.",
                "keg 50|It does not say how much it holds.",
                "2 bottles|It does not say how much it holds.",
                "700|It has no unit.",
                "12/750|It has no unit.",
                "ml|There is no number before \"ml\".",
                "6 700 ml|Two numbers stand side by side with no sign between them.",
                "70cl 6|The number after \"cl\" says not what it counts.",
                "6 x 70cl + 1 x 50cl|It gives two sizes.",
                "0.5 x 70cl|\"0.5\" is no count.",
                "0 x 70cl|\"0\" is no count.",
                "0 ml|A pack of 0 ml cannot be.",
                "0.7 ml|A pack of 0.7 ml cannot be.",
                "-5 kg|A pack cannot hold less than nothing.",
                "1.000 cl|\"1.000\" could be read with thousands or with decimals.",
                "1.2.3 l|\"1.2.3\" is no number.",
                "1/2 lb|\"1/2 lb\" could be a fraction, or a number of packs of a size.",
                "1/5 gal|\"1/5 gallon\" could be a fraction, or a number of packs of a size.",
                "6/1/2 gal|\"1/2 gallon\" could be a fraction, or a number of packs of a size.",
                "8 ct 1 lb|It could be 8 packs of that weight, or 8 pieces of that weight together.",
                "12 + x 70cl|The sign + has no number on both sides.",
                "dry gin 70cl|\"dry\" is no unit or word of a pack.",
                "6/#11|\"#\" is no unit or word of a pack."
            })
    void refusesWithAReason(String text, String reason) {
        assertThat(Packs.read(text, Measure.ML)).isEqualTo(new Packs.Reading(null, reason));
        assertThat(Packs.parse(text, Measure.ML)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "12, 12"})
    void aBareNumberCountsWhatIsCountedInPieces(String text, String pieces) {
        assertThat(total(text, Measure.EACH)).isEqualTo(Amount.of(pieces, Measure.EACH));
        assertThat(Packs.parse(text, Measure.ML)).isEmpty();
        assertThat(Packs.parse(text, Measure.G)).isEmpty();
    }

    @Test
    void aCountBesideAMassIsPiecesWhereTheIngredientIs() {
        assertThat(total("115 ct 38 lb", Measure.EACH)).isEqualTo(Amount.of("115", Measure.EACH));
    }

    @Property
    void anyCountTimesAnySize(
            @ForAll @IntRange(min = 1, max = 144) int count, @ForAll @IntRange(min = 1, max = 999) int cl) {
        Amount expected = new Amount(Exact.of(10L * cl * count), Measure.ML);
        for (String sign : List.of("x", " x ", "*", " X ", "×", "-")) {
            assertThat(total(count + sign + cl + "cl", Measure.ML)).isEqualTo(expected);
        }
    }

    private static Amount total(String text, Measure measure) {
        return pack(text, measure).total();
    }

    private static Pack pack(String text, Measure measure) {
        Packs.Reading reading = Packs.read(text, measure);
        if (reading.pack() == null) {
            throw new AssertionError(text + ": " + reading.reason());
        }
        return reading.pack();
    }
}
