package heeltap.load;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import heeltap.quantity.Units;
import heeltap.record.Folding;
import heeltap.record.SpecAmount;
import heeltap.source.Cell;
import java.math.BigDecimal;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpecTextTest {
    private static final Set<String> KNOWN = Set.of("lime", "limejuice", "egg", "olive", "7up", "soda");
    private static final SpecText POINT = text('.');

    private static SpecText text(char decimal) {
        return new SpecText(
                new BookNumbers(decimal, true, false),
                Units.standard().with("pump", Exact.of(7)),
                name -> KNOWN.contains(Folding.fold(name)));
    }

    /** Amount, unit and ingredient as written; then number, unit and ingredient as understood. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "22.5|ml|Gin|22.5|ml|Gin",
                "22.5|-|Gin|22.5|-|Gin",
                ".5|oz|Gin|0.5|oz|Gin",
                "3/4|oz|Gin|0.75|oz|Gin",
                "1 1/2|oz|Gin|1.5|oz|Gin",
                "1½|oz|Gin|1.5|oz|Gin",
                "¾|oz|Gin|0.75|oz|Gin",
                "½ oz|-|Gin|0.5|oz|Gin",
                "1½oz|-|Gin|1.5|oz|Gin",
                "22.5ml|-|Gin|22.5|ml|Gin",
                "1oz|-|Gin|1|oz|Gin",
                "1 OZ.|oz|Gin|1|oz|Gin",
                "2 cL|-|Gin|2|cl|Gin",
                "30 ml|ML|Gin|30|ML|Gin",
                "2 bar spoons|-|Gin|2|bar spoons|Gin",
                "1 fl. oz|-|Gin|1|fl. oz|Gin",
                "2 pumps|-|Vanilla syrup|2|pumps|Vanilla syrup",
                "2 parts|-|Gin|2|parts|Gin",
                "1 shot|-|Gin|1|shot|Gin",
                "2 jiggers|-|Gin|2|jiggers|Gin",
                "1|Jigger|Gin|1|Jigger|Gin",
                "a dash|-|Bitters|1|dash|Bitters",
                "two dashes|-|Bitters|2|dashes|Bitters",
                "half|each|Lime|0.5|each|Lime",
                "2 limes|-|Lime|2|-|Lime",
                "2 oz lime juice|-|Lime juice|2|oz|Lime juice",
                "1 dash of|-|Bitters|1|dash of|Bitters",
                "-|-|2 oz lime juice|2|oz|lime juice",
                "-|-|22.5ml Gin|22.5|ml|Gin",
                "-|-|1 1/2 oz Old Tom gin|1.5|oz|Old Tom gin",
                "-|-|2 dashes of Bitters|2|dashes|Bitters",
                "-|-|1 egg|1|-|egg",
                "-|-|2 Eggs|2|-|Egg",
                "-|-|1 olive|1|-|olive",
                "-|-|½ oz Lime juice|0.5|oz|Lime juice"
            })
    void understands(String amount, String unit, String ingredient, String number, String foundUnit, String foundName) {
        SpecText.Line line = read(POINT, amount, unit, ingredient);
        assertThat(line.amount()).isEqualTo(new SpecAmount.Units(Exact.of(number)));
        assertThat(line.unit()).isEqualTo(foundUnit == null ? "" : foundUnit.replace(" of", ""));
        assertThat(line.ingredient()).isEqualTo(foundName);
        assertThat(line.notice()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"22,5|22.5", "0,75|0.75", "1.000|1000", "22,5ml|22.5", "1,5-2,5 cl|2.5"})
    void readsDecimalCommas(String amount, String number) {
        assertThat(read(text(','), amount, "", "Gin").amount()).isEqualTo(new SpecAmount.Units(Exact.of(number)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1-2|2|''|Of the range from 1 to 2 the upper end is costed.",
                "1 - 2 dashes|2|dashes|Of the range from 1 to 2 the upper end is costed.",
                "2 or 3|3|''|Of the range from 2 to 3 the upper end is costed.",
                "1 to 2|2|''|Of the range from 1 to 2 the upper end is costed.",
                "1–2|2|''|Of the range from 1 to 2 the upper end is costed.",
                "1/2 - 3/4 oz|0.75|oz|Of the range from 0.5 to 0.75 the upper end is costed.",
                "1-1/2 oz|1.5|oz|It is read as 1.5, not as a range.",
                "about 8 drops|8|drops|It says about; the number is costed as it stands.",
                "~ 10 ml|10|ml|It says about; the number is costed as it stands.",
                "ca. 5|5|''|It says about; the number is costed as it stands."
            })
    void saysWhatItTook(String amount, String number, String unit, String notice) {
        SpecText.Line line = read(POINT, amount, "", "Bitters");
        assertThat(line).isEqualTo(new SpecText.Line(new SpecAmount.Units(Exact.of(number)), unit, "Bitters", notice));
    }

    @ParameterizedTest
    @CsvSource({"top", "Top", "to top", "TOP UP", "fill", "fill up", "top with soda", "to fill", "auffüllen"})
    void toTop(String amount) {
        assertThat(read(POINT, amount, "", "Soda").amount()).isEqualTo(new SpecAmount.ToTop());
        assertThat(read(POINT, "", amount, "Soda"))
                .isEqualTo(new SpecText.Line(new SpecAmount.ToTop(), "", "Soda", ""));
    }

    @Test
    void toTopInTheCellOfTheIngredient() {
        assertThat(read(POINT, "", "", "Top with Soda"))
                .isEqualTo(new SpecText.Line(new SpecAmount.ToTop(), "", "Soda", ""));
    }

    @ParameterizedTest
    @CsvSource({"rinse", "Rinse", "a rinse", "1 rinse", "rinse glass", "glass rinse"})
    void rinse(String amount) {
        assertThat(read(POINT, amount, "", "Absinthe").amount()).isEqualTo(new SpecAmount.Rinse());
        assertThat(read(POINT, amount, "dash", "Absinthe").unit()).isEqualTo("dash");
    }

    @Test
    void toTarget() {
        assertThat(read(POINT, "To Target", "g", "Citric acid"))
                .isEqualTo(new SpecText.Line(new SpecAmount.ToTarget(), "g", "Citric acid", ""));
    }

    @ParameterizedTest
    @CsvSource({
        "juice of 1/2, Lime, 0.5",
        "Juice of ½ lime, Lime, 0.5",
        "juice of half a lime, Lime, 0.5",
        "the juice of 2 limes, Lime, 2",
        "juice of one, Lime, 1",
        "jus de 1/2, Lime, 0.5",
        "Saft von 2, Lime, 2"
    })
    void juiceOf(String amount, String ingredient, String pieces) {
        assertThat(read(POINT, amount, "", ingredient).amount()).isEqualTo(new SpecAmount.JuiceOf(Exact.of(pieces)));
    }

    @Test
    void juiceOfInTheCellOfTheIngredient() {
        assertThat(read(POINT, "", "", "juice of 1/2 Lime"))
                .isEqualTo(new SpecText.Line(new SpecAmount.JuiceOf(Exact.of("0.5")), "", "Lime", ""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''|''|Gin|There is no amount.",
                "''|ml|Gin|There is no amount.",
                "''|''|7 Up|There is no amount.",
                "''|''|4 Roses|There is no amount.",
                "to taste|''|Salt|\"to taste\" has no amount that could be costed.",
                "salt to taste|''|Salt|\"salt to taste\" has no amount that could be costed.",
                "garnish|''|Mint|\"garnish\" has no amount that could be costed.",
                "lots|''|Mint|\"lots\" has no amount that could be costed.",
                "-5|ml|Gin|An amount cannot be negative.",
                "two fingers|''|Gin|\"fingers\" is no unit.",
                "1/0|oz|Gin|\"1/0\" is no number.",
                "3-2|''|Gin|The range does not rise from 3 to 2.",
                "22.5ml|oz|Gin|The amount says ml and the column Unit says oz.",
                "1 oz rum|''|Gin|\"rum\" does not belong to an amount.",
                "5%|''|Gin|\"%\" is no unit.",
                "juice of 1/2 lemon|''|Lime|It names \"lemon\", but the ingredient is \"Lime\".",
                "juice of 2|ml|Lime|Juice of so many pieces has no unit ml.",
                "x|''|Gin|\"x\" is no amount."
            })
    void refusesWithAReason(String amount, String unit, String ingredient, String reason) {
        assertThat(read(POINT, amount, unit, ingredient))
                .isEqualTo(new SpecText.Line(new SpecAmount.Unclear(reason), unit, ingredient, ""));
    }

    /** Typed into a spreadsheet, 1/2 becomes the first of February. */
    @Test
    void aDateIsNoAmount() {
        Cell cell = new Cell(0, "01-Feb", new BigDecimal("46054"), LocalDateTime.of(2026, 2, 1, 0, 0));
        assertThat(POINT.read(Optional.of(cell), "oz", "Gin").amount())
                .isEqualTo(new SpecAmount.Unclear("The spreadsheet holds a date here, as happens when 1/2 is typed."));
    }

    @Test
    void storedNumbersAreExactAndMayShowAUnit() {
        Cell plain = new Cell(0, "22.5", new BigDecimal("22.5"), null);
        Cell shown = new Cell(0, "22.5 ml", new BigDecimal("22.5"), null);
        Cell fraction = new Cell(0, "3/4", new BigDecimal("0.75"), null);
        Cell percent = new Cell(0, "50%", new BigDecimal("0.5"), null);
        Cell negative = new Cell(0, "-1", new BigDecimal("-1"), null);
        assertThat(stored(plain)).isEqualTo(new SpecText.Line(new SpecAmount.Units(Exact.of("22.5")), "", "Gin", ""));
        assertThat(stored(shown)).isEqualTo(new SpecText.Line(new SpecAmount.Units(Exact.of("22.5")), "ml", "Gin", ""));
        assertThat(stored(fraction).amount()).isEqualTo(new SpecAmount.Units(Exact.of("0.75")));
        assertThat(stored(percent).amount()).isEqualTo(new SpecAmount.Unclear("A percentage is no amount."));
        assertThat(stored(negative).amount()).isEqualTo(new SpecAmount.Unclear("An amount cannot be negative."));
    }

    private static SpecText.Line stored(Cell cell) {
        return POINT.read(Optional.of(cell), "", "Gin");
    }

    private static SpecText.Line read(SpecText text, String amount, String unit, String ingredient) {
        Optional<Cell> cell = amount == null || amount.isBlank() ? Optional.empty() : Optional.of(Cell.text(0, amount));
        return text.read(cell, unit == null ? "" : unit, ingredient);
    }
}
