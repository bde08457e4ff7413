package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import heeltap.document.Block;
import heeltap.document.Card;
import heeltap.document.Card.Fact;
import heeltap.document.Card.Measured;
import heeltap.quantity.Exact;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The preparation sheets and spec cards of two bars, as the document has them before any format. */
class WorkSheetsTest {
    private static final WrittenBar.Reviewed SAMPLE = WrittenBar.Reviewed.of(Path.of("sample-input"));
    private static final WrittenBar.Reviewed STILL_ROOM =
            WrittenBar.Reviewed.of(Path.of("src/test/resources/heeltap/golden/glass-and-targets/input"));

    private static List<Card> cards(WrittenBar.Reviewed bar, String section) {
        return bar.review().document().sections().stream()
                .filter(one -> one.id().equals(section))
                .flatMap(one -> one.blocks().stream())
                .filter(Block.Cards.class::isInstance)
                .flatMap(block -> ((Block.Cards) block).cards().stream())
                .toList();
    }

    private static Card sheet(WrittenBar.Reviewed bar, String name) {
        return card(cards(bar, "preparation-sheets"), name);
    }

    private static Card spec(WrittenBar.Reviewed bar, String name) {
        return card(cards(bar, "spec-cards"), name);
    }

    private static Card card(List<Card> cards, String name) {
        return cards.stream()
                .filter(card -> card.title().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static String fact(Card card, String name) {
        return card.facts().stream()
                .filter(fact -> fact.name().equals(name))
                .map(Fact::value)
                .findFirst()
                .orElse("");
    }

    /** Sold on 31 October days, so November's 30 days need 30/31 of it: 500 ml of Lime orange, 1,030.9 ml a batch. */
    @Test
    void theCardScalesToTheBatchAndToTheComingMonth() {
        Card lime = sheet(STILL_ROOM, "Lime orange");
        assertThat(lime.headings()).containsExactly("A batch", "November 2026");
        assertThat(lime.lines())
                .extracting(Card.Line::name)
                .containsExactly("Orange pressed", "Citric acid", "Malic acid");
        assertThat(lime.lines().get(1).amounts().get(0)).contains(new Measured(Exact.of(32), 1, 1, "g"));
        Exact month = lime.lines().get(1).amounts().get(1).orElseThrow().amount();
        Exact made = lime.whole().orElseThrow().amounts().get(1).orElseThrow().amount();
        assertThat(made).isEqualTo(Exact.of(500).times(Exact.of(30)).dividedBy(Exact.of(31)));
        Exact batch = lime.whole().orElseThrow().amounts().get(0).orElseThrow().amount();
        assertThat(month).isEqualTo(Exact.of(32).times(made).dividedBy(batch));
        assertThat(lime.lines().get(2).amounts().get(1).orElseThrow().decimals())
                .as("below 10 g to the hundredth")
                .isEqualTo(2);
        assertThat(fact(lime, "A litre")).isEqualTo("€3.51");
        assertThat(fact(lime, "Labour")).isEqualTo("10 min, €3.00");
        assertThat(lime.steps())
                .containsExactly(
                        "Weigh Citric acid; Malic acid and dissolve in Orange pressed.",
                        "Measure what came out: 1,031\u00A0ml by computation. Write a measured yield into the book.",
                        "Label: name, allergens, made on ______ by ______, use by ______ (4 days after).");
    }

    @Test
    void everyPreparationAndEveryMixedDrinkHasItsCard() {
        assertThat(cards(SAMPLE, "preparation-sheets")).hasSize(12);
        assertThat(cards(SAMPLE, "spec-cards"))
                .hasSize(23)
                .extracting(Card::title)
                .doesNotContain("Bottled pale ale, 33 cl");
        assertThat(cards(STILL_ROOM, "preparation-sheets"))
                .extracting(Card::title)
                .contains("Brine too strong");
        assertThat(fact(sheet(STILL_ROOM, "Brine too strong"), "Cannot be costed:"))
                .startsWith("The target cannot be met: 40 % salt does not dissolve");
        assertThat(sheet(STILL_ROOM, "Brine too strong").whole()).isEmpty();
    }

    /** By what is in it, whether or not the book has a word of caution. */
    @ParameterizedTest
    @CsvSource({
        "Lime orange, Ours to taste.",
        "Lime orange, Food acid",
        "Typed orange, Food acid",
        "Juniper gin, Infusion",
        "Half syrup, Not sour",
        "Half syrup, The book keeps it for 21 days",
    })
    void cautionsOfPreparations(String preparation, String words) {
        assertThat(sheet(STILL_ROOM, preparation).cautions()).anyMatch(caution -> caution.startsWith(words));
    }

    @Test
    void cautionsStandOnlyWhereTheyBelong() {
        assertThat(sheet(STILL_ROOM, "Lemon juice").cautions()).isEmpty();
        assertThat(sheet(STILL_ROOM, "Brine").cautions()).isEmpty();
        assertThat(sheet(STILL_ROOM, "Juniper gin").cautions()).hasSize(1);
        assertThat(spec(STILL_ROOM, "White foam").cautions())
                .hasSize(2)
                .anyMatch(caution -> caution.startsWith("Egg"))
                .anyMatch(caution -> caution.startsWith("Nuts"));
        assertThat(spec(STILL_ROOM, "Sour with jam").cautions()).isEmpty();
        assertThat(spec(SAMPLE, "Gin and tonic").cautions())
                .singleElement()
                .asString()
                .startsWith("Quinine");
    }

    @Test
    void specCardsSayTheGlass() {
        Card card = spec(STILL_ROOM, "Watered");
        assertThat(card.summary()).isEqualTo("Shaken; 25.0% water from ice (the drink's own)");
        assertThat(card.lines()).extracting(Card.Line::name).containsExactly("50 ml House gin", "25 ml Lime orange");
        assertThat(fact(card, "Served")).isEqualTo("93.66\u00A0ml");
        assertThat(fact(card, "Standard drinks")).isEqualTo("1.13 of 14 g");
        assertThat(fact(card, "Energy")).isEqualTo("119 kcal, 495 kJ");
        assertThat(spec(STILL_ROOM, "Frozen").summary()).isEqualTo("Blended; 60.0% water from ice (usual percent)");
        assertThat(spec(STILL_ROOM, "Sour with jam").summary())
                .isEqualTo("Shaken; 33.7% water from ice (heat balance), ends at \u22124\u00A0°C");
        Card unknown = spec(STILL_ROOM, "Nobody knows");
        assertThat(fact(unknown, "ABV")).as("of a liquid that nobody described").isEmpty();
        assertThat(Optional.of(fact(unknown, "Served")))
                .hasValueSatisfying(ml -> assertThat(ml).isNotEmpty());
    }

    /** 500 g of sugar do not dissolve in 150 ml of water (67.09 % by mass at 20 °C), but in what is blended with it. */
    @Test
    void theOrderOfWorkCanBeDone() {
        assertThat(sheet(SAMPLE, "Cucumber cordial").steps())
                .startsWith("Weigh Caster sugar; Citric acid and work into Filtered water; Cucumber until dissolved:"
                        + " blend, or warm gently. The liquids alone do not dissolve it at 20\u00A0°C.")
                .noneMatch(step -> step.startsWith("Add Cucumber"));
        assertThat(sheet(SAMPLE, "Sugar syrup").steps())
                .startsWith("Weigh Caster sugar and dissolve in Filtered water.");
    }

    /** Peel stays peel; at the edge of a spec card stands only what its words do not say. */
    @Test
    void amountsReadAsTheHandMeetsThem() {
        assertThat(sheet(SAMPLE, "Peel and spice gin").lines().get(1).amounts().get(0))
                .contains(new Measured(Exact.of(2), 2, 0, "peels"));
        Map<String, String> edges = new TreeMap<>();
        cards(SAMPLE, "spec-cards").stream()
                .flatMap(card -> card.lines().stream())
                .forEach(line -> edges.put(
                        line.name(),
                        line.amounts()
                                .get(0)
                                .map(amount -> amount.amount() + " " + amount.unit())
                                .orElse("")));
        assertThat(edges)
                .containsEntry("1/8 Orange", "")
                .containsEntry("110 ml Lamplighter batch", "")
                .containsEntry("rinse Anise and wormwood spirit", "5 ml")
                .containsEntry("2 dashes Aromatic bitters", "1.8 ml");
        assertThat(edges.keySet()).noneMatch(name -> name.contains(" each ") || name.startsWith("2 dash "));
        assertThat(spec(SAMPLE, "Lamplighter").summary()).isEqualTo("No ice");
    }

    /** 110 ml of the batch and 1 of 5 ml of the rinse are in the glass; all 5 are paid for and used. */
    @Test
    void aRinseIsPaidForAndMostOfItPouredOut() {
        var row = SAMPLE.row("drinks", "Lamplighter");
        assertThat(WrittenBar.Reviewed.number(row, "volume_ml").toDouble()).isCloseTo(111, within(0.05));
    }

    /** 20 g of jam hold 12 g sugar and 0.1 g acid by its label, 25 ml of lemon juice 0.65 and 1.2 g as published. */
    @ParameterizedTest
    @CsvSource({"Sour with jam, 12.65, 1.3", "Sour with both, 12.798, 1.25", "Sour with syrup, 12.947, 1.2"})
    void jamCountsItsSugarAndAcidBesideSyrup(String drink, double sugar, double acid) {
        var row = STILL_ROOM.row("drinks", drink);
        assertThat(WrittenBar.Reviewed.number(row, "sugar_g").toDouble()).isCloseTo(sugar, within(0.001));
        assertThat(WrittenBar.Reviewed.number(row, "acid_g").toDouble()).isCloseTo(acid, within(0.001));
    }
}
