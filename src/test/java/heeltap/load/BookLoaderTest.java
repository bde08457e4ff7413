package heeltap.load;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.Book;
import heeltap.record.SpecAmount;
import heeltap.record.SpecLine;
import org.junit.jupiter.api.Test;

class BookLoaderTest {
    @Test
    void readsASmallBook() {
        BookBuilder builder = new BookBuilder()
                .with("drinks", "Our drinks\n\nPRICE|drink|Category|On menu from\n€ 11,50|Gimlet|Classics|1.9.2026")
                .with("ingredients", "Ingredient|ABV|Usable percent|List price|List pack\nGin|40|95 %|14,90|70cl")
                .with("specs", "Item|Ingredient|Amount|Unit\nGimlet|Gin|1 1/2|oz\nGimlet|Gin|22,5ml|");
        assertThat(builder.problems()).isEmpty();
        Book book = builder.load().value().book();
        assertThat(book.bar()).isEqualTo("my-bar");
        assertThat(book.drinks().get(0).price()).isEqualTo(Money.of("11.50"));
        assertThat(book.drinks().get(0).onMenuFrom()).isEqualTo("2026-09-01");
        assertThat(book.drinks().get(0).place().toString()).isEqualTo("book/drinks.csv, row 4");
        assertThat(book.ingredients().get(0).usablePercent()).isEqualTo(Exact.of(95));
        assertThat(book.specs())
                .extracting(SpecLine::amount)
                .containsExactly(new SpecAmount.Units(Exact.of("1.5")), new SpecAmount.Units(Exact.of("22.5")));
        assertThat(book.specs()).extracting(SpecLine::unit).containsExactly("oz", "ml");
    }
}
