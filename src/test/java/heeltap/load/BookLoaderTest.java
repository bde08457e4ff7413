package heeltap.load;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.record.AcidTargets;
import heeltap.record.Book;
import heeltap.record.FileAccount;
import heeltap.record.IceWater;
import heeltap.record.Ingredient;
import heeltap.record.NameRule;
import heeltap.record.PriceRule;
import heeltap.record.SetAside;
import heeltap.record.Setting;
import heeltap.record.Settings;
import heeltap.record.SpecAmount;
import heeltap.record.SpecLine;
import heeltap.source.Cell;
import heeltap.source.MemorySheet;
import heeltap.source.Row;
import heeltap.source.Sheet;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class BookLoaderTest {
    @Test
    void readsASmallBook() {
        BookBuilder builder = new BookBuilder()
                .with("drinks", "Our drinks\n\nPRICE|drink|Category|On menu from\n€ 11,50|Gimlet|Classics|1.9.2026")
                .with(
                        "ingredients",
                        "Ingredient|ABV (% vol)|Usable percent|List price|List pack\nGin|40|95 %|14,90|70cl")
                .with("specs", "Item|Ingredient|Amount|Unit\nGimlet|Gin|1 1/2|oz\nGimlet|Gin|22,5ml|");
        assertThat(builder.problems()).isEmpty();
        Book book = builder.load().value().book();
        assertThat(book.bar()).isEqualTo("my-bar");
        assertThat(book.drinks().get(0).price()).isEqualTo(Money.of("11.50"));
        assertThat(book.drinks().get(0).onMenuFrom()).isEqualTo("2026-09-01");
        assertThat(book.drinks().get(0).place().toString()).isEqualTo("book/drinks.csv, row 4");
        Ingredient gin = book.ingredients().get(0);
        assertThat(gin.usablePercent()).isEqualTo(Exact.of(95));
        assertThat(gin.composition().abvPercent()).isEqualTo(Exact.of(40));
        assertThat(gin.group()).isEqualTo("Other");
        assertThat(Objects.requireNonNull(gin.listPack()).total()).isEqualTo(Amount.of("700", Measure.ML));
        assertThat(book.specs())
                .extracting(SpecLine::amount)
                .containsExactly(new SpecAmount.Units(Exact.of("1.5")), new SpecAmount.Units(Exact.of("22.5")));
        assertThat(book.specs()).extracting(SpecLine::unit).containsExactly("oz", "ml");
        assertThat(book.specs()).extracting(SpecLine::amountText).containsExactly("1 1/2", "22,5ml");
    }

    @Test
    void readsEverySetting() {
        Settings settings =
                new BookBuilder().with("settings", """
                        Setting|Value
                        Bar|The Bilge
                        CURRENCY|gbp
                        language|de-AT
                        Menu  prices include tax|Ja
                        sales tax percent|20 %
                        drink cost price|FIFO
                        stock value price|latest
                        price endings|.00 .50
                        day starts at|4:30 am
                        group price elasticity|-0,8
                        acid targets|exact
                        water from ice|Usual percent
                        shaken drinks end at|-5,5
                        ice starts at|-18
                        largest average price rise percent|
                        least gain a month|£25""").load().value().book().settings();
        assertThat(settings.get(Setting.BAR)).isEqualTo("The Bilge");
        assertThat(settings.get(Setting.CURRENCY)).isEqualTo(Currency.getInstance("GBP"));
        assertThat(settings.get(Setting.LANGUAGE)).isEqualTo(Locale.forLanguageTag("de-AT"));
        assertThat(settings.get(Setting.MENU_PRICES_INCLUDE_TAX)).isTrue();
        assertThat(settings.get(Setting.SALES_TAX_PERCENT)).isEqualTo(Exact.of(20));
        assertThat(settings.get(Setting.DRINK_COST_PRICE)).isEqualTo(PriceRule.FIFO);
        assertThat(settings.get(Setting.STOCK_VALUE_PRICE)).isEqualTo(PriceRule.LATEST);
        assertThat(settings.get(Setting.PRICE_ENDINGS)).containsExactly(Money.of("0"), Money.of("0.50"));
        assertThat(settings.get(Setting.DAY_STARTS_AT)).isEqualTo(LocalTime.of(4, 30));
        assertThat(settings.get(Setting.GROUP_ELASTICITY)).isEqualTo(Exact.of("-0.8"));
        assertThat(settings.get(Setting.ACID_TARGETS)).isEqualTo(AcidTargets.EXACT);
        assertThat(settings.get(Setting.WATER_FROM_ICE)).isEqualTo(IceWater.USUAL_PERCENT);
        assertThat(settings.get(Setting.SHAKEN_ENDS_AT)).isEqualTo(Exact.of("-5.5"));
        assertThat(settings.get(Setting.ICE_STARTS_AT)).isEqualTo(Exact.of(-18));
        assertThat(settings.isSet(Setting.LARGEST_AVERAGE_RISE_PERCENT)).isFalse();
        assertThat(settings.get(Setting.LEAST_GAIN)).isEqualTo(Money.of("25"));
        assertThat(settings.get(Setting.TARGET_COST_PERCENT)).isEqualTo(Exact.of(22));
    }

    /** Ice above its melting point cannot be, and ice below it has no water clinging to it. */
    @Test
    void iceIsNotWarmerThanItMeltsNorWetBelow() {
        var loaded = new BookBuilder().with("settings", """
                        Setting|Value
                        currency|EUR
                        menu prices include tax|yes
                        ice starts at|-18
                        wet ice percent|5
                        built drinks end at|-60""").load();
        assertThat(loaded.problems())
                .extracting(problem -> problem.reason())
                .contains(
                        "Ice colder than 0 °C is dry, so \"wet ice percent\" has no effect.",
                        "\"built drinks end at\" must be a number from -40 to 100 (°C).");
        assertThat(loaded.value().book().settings().get(Setting.BUILT_ENDS_AT)).isEqualTo(Exact.of(3));
    }

    /** A workbook stores 22 % as 0.22, a date as a number with a format, and a time as a part of a day. */
    @Test
    void readsWhatAWorkbookStores() {
        List<Sheet> sheets = new ArrayList<>();
        sheets.add(MemorySheet.ofRows(
                "book.xlsx",
                "Settings",
                List.of(
                        new Row(1, List.of(Cell.text(0, "Setting"), Cell.text(1, "Value"))),
                        new Row(2, List.of(Cell.text(0, "currency"), Cell.text(1, "EUR"))),
                        new Row(3, List.of(Cell.text(0, "menu prices include tax"), Cell.text(1, "no"))),
                        new Row(
                                4,
                                List.of(
                                        Cell.text(0, "target cost percent"),
                                        new Cell(1, "18%", new BigDecimal("0.18"), null))),
                        new Row(
                                5,
                                List.of(
                                        Cell.text(0, "day starts at"),
                                        new Cell(
                                                1,
                                                "06:00",
                                                new BigDecimal("0.25"),
                                                LocalDateTime.of(1899, 12, 31, 6, 0)))))));
        sheets.add(MemorySheet.ofRows(
                "book.xlsx",
                "Drinks",
                List.of(
                        new Row(
                                3,
                                List.of(
                                        Cell.text(1, "Drink"),
                                        Cell.text(2, "Price"),
                                        Cell.text(3, "Water percent"),
                                        Cell.text(4, "On menu from"))),
                        new Row(
                                4,
                                List.of(
                                        Cell.text(1, "Gimlet"),
                                        new Cell(2, "12", new BigDecimal("11.5"), null),
                                        new Cell(3, "25%", new BigDecimal("0.25"), null),
                                        new Cell(
                                                4,
                                                "9/1/26",
                                                new BigDecimal("46266"),
                                                LocalDateTime.of(2026, 9, 1, 0, 0)))))));
        var loaded = BookLoader.load("my-bar", sheets);
        assertThat(loaded.problems()).isEmpty();
        Book book = loaded.value().book();
        assertThat(book.settings().get(Setting.TARGET_COST_PERCENT)).isEqualTo(Exact.of(18));
        assertThat(book.settings().get(Setting.DAY_STARTS_AT)).isEqualTo(LocalTime.of(6, 0));
        assertThat(book.drinks().get(0).price()).isEqualTo(Money.of("11.5"));
        assertThat(book.drinks().get(0).waterPercent()).isEqualTo(Exact.of(25));
        assertThat(book.drinks().get(0).onMenuFrom()).isEqualTo(LocalDate.of(2026, 9, 1));
        assertThat(book.drinks().get(0).place().toString()).isEqualTo("book.xlsx, sheet Drinks, row 4");
        FileAccount drinks = loaded.value().files().get(1);
        assertThat(drinks.headingRow()).isEqualTo(3);
        assertThat(drinks.decimals()).isEqualTo("stored");
        assertThat(drinks.dates()).isEqualTo("stored");
        assertThat(drinks.encoding()).isEmpty();
    }

    @Test
    void accountsForEveryRow() {
        LoadedBook loaded = new BookBuilder()
                .with(
                        "drinks",
                        "Drink|Price|On menu from\nGimlet|11,5|2026-09-01\n||\nDrink|Price|On menu from\n|12|\ngimlet|9|")
                .with("notes", "anything")
                .load()
                .value();
        FileAccount drinks = loaded.files().get(1);
        assertThat(drinks.kind()).isEqualTo("drinks");
        assertThat(drinks.place().file()).isEqualTo("book/drinks.csv");
        assertThat(drinks.encoding()).isEqualTo("UTF-8");
        assertThat(drinks.delimiter()).isEqualTo("comma");
        assertThat(drinks.headingRow()).isEqualTo(1);
        assertThat(drinks.decimals()).isEqualTo("comma");
        assertThat(drinks.dates()).isEqualTo("year-month-day");
        assertThat(List.of(drinks.rows(), drinks.used(), drinks.ignored(), drinks.setAside()))
                .containsExactly(4, 1, 1, 2);
        assertThat(loaded.setAside())
                .extracting(SetAside::place, SetAside::text, SetAside::reason)
                .extracting(Object::toString)
                .containsExactly(
                        "(book/drinks.csv, row 5, \"12\", \"This cell must not be empty.\")",
                        "(book/drinks.csv, row 6, \"gimlet, 9\", \"The same Drink stands at book/drinks.csv, row 2, column A "
                                + "(Drink).\")");
        FileAccount notes = loaded.files().get(2);
        assertThat(notes.kind()).isEqualTo("not read");
        assertThat(notes.rows()).isZero();
    }

    @Test
    void aSheetRefusedIsOneEntry() {
        LoadedBook loaded =
                new BookBuilder().with("specs", "Gimlet|Gin|50").load().value();
        assertThat(loaded.files().get(2).kind()).isEqualTo("refused");
        assertThat(loaded.files().get(2).rows()).isZero();
        assertThat(loaded.setAside())
                .singleElement()
                .satisfies(row -> assertThat(row.place().row()).isZero());
    }

    @Test
    void anEmptyCellTakesItsDefault() {
        Book book = new BookBuilder()
                .with("categories", "Category\nClassics")
                .with("ingredients", "Ingredient\nGin")
                .with("preparations", "Preparation|Makes\nCordial|500")
                .with("names", "As written|Means\nGIML|Gimlet")
                .load()
                .value()
                .book();
        assertThat(book.categories().get(0).compareWithin()).isEqualTo("Classics");
        assertThat(book.categories().get(0).inMenuAnalysis()).isTrue();
        assertThat(book.ingredients().get(0).measure()).isEqualTo(Measure.ML);
        assertThat(book.ingredients().get(0).usablePercent()).isEqualTo(Exact.HUNDRED);
        assertThat(Objects.requireNonNull(book.preparations().get(0).makesUnit())
                        .name())
                .isEqualTo("ml");
        assertThat(book.names().get(0).where()).isEqualTo(NameRule.Where.ANY);
        assertThat(book.names().get(0).times()).isEqualTo(Exact.ONE);
    }

    @Test
    void whatCannotBeCostedIsKeptWithTheReason() {
        Book book = new BookBuilder()
                .with("ingredients", "Ingredient|Measure\nGin|bottle")
                .with("preparations", "Preparation|Makes|Loss percent\nCordial|500|10")
                .with("specs", """
                        Item|From|Ingredient|Amount
                        Gimlet||Gin|50
                        Gimlet||Cordial|20
                        Cordial||Sugar|100
                        Cordial|2026-09-01|Sugar|120
                        Sidecar||Brandy|50
                        Sidecar|2026-09-01|Brandy|45
                        ||Lemon juice|20""")
                .load()
                .value()
                .book();
        assertThat(unclear(book, "Gimlet"))
                .containsExactly("null \"Gin\" is left out: Measure must be one of: ml, g, each.");
        assertThat(unclear(book, "Cordial"))
                .containsExactly(
                        "null Loss percent: A Loss percent stands beside a typed Makes, which is measured after all losses.",
                        "2026-09-01 Loss percent: A Loss percent stands beside a typed Makes, which is measured after all "
                                + "losses.");
        assertThat(unclear(book, "Sidecar"))
                .containsExactly(
                        "null The line at book/specs.csv, row 8 has no Item and may belong to it.",
                        "2026-09-01 The line at book/specs.csv, row 8 has no Item and may belong to it.");
        assertThat(book.preparations()).hasSize(1);
    }

    @Test
    void aLineWhoseDateCannotBeReadSpoilsEveryVersion() {
        Book book = new BookBuilder().with("specs", """
                        Item|From|Ingredient|Amount
                        Gimlet|2026-09-01|Gin|50
                        Gimlet|2026-10-01|Gin|45
                        Gimlet|soon|Lime juice|20""").load().value().book();
        assertThat(unclear(book, "Gimlet"))
                .containsExactlyInAnyOrder(
                        "null From: This is no date.",
                        "2026-09-01 From: This is no date.",
                        "2026-10-01 From: This is no date.");
    }

    private static List<String> unclear(Book book, String item) {
        return book.specs().stream()
                .filter(line -> line.item().equals(item))
                .filter(line -> line.amount() instanceof SpecAmount.Unclear)
                .map(line -> line.from() + " " + ((SpecAmount.Unclear) line.amount()).reason())
                .toList();
    }
}
