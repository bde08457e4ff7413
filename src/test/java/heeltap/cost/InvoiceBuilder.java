package heeltap.cost;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.quantity.Pack;
import heeltap.record.Invoice;
import heeltap.record.InvoiceLine;
import heeltap.source.Place;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.NullMarked;
import org.jspecify.annotations.Nullable;

/** Writes an invoice in a few lines of a test. */
@NullMarked
final class InvoiceBuilder {
    private final String number;
    private final @Nullable LocalDate date;
    private final String file;
    private final List<InvoiceLine> lines = new ArrayList<>();
    private boolean creditNote;
    private boolean withTax;
    private Money discount = Money.ZERO;
    private Money delivery = Money.ZERO;
    private @Nullable Money tax;

    InvoiceBuilder(String number, String date) {
        this.number = number;
        this.date = date.isEmpty() ? null : LocalDate.parse(date);
        this.file = number + ".csv";
    }

    InvoiceBuilder creditNote() {
        creditNote = true;
        return this;
    }

    InvoiceBuilder pricesWithTax(@Nullable String printedTax) {
        withTax = true;
        tax = printedTax == null ? null : Money.of(printedTax);
        return this;
    }

    InvoiceBuilder discount(String value) {
        discount = Money.of(value);
        return this;
    }

    InvoiceBuilder delivery(String value) {
        delivery = Money.of(value);
        return this;
    }

    InvoiceBuilder line(String product, @Nullable Pack pack, String quantity, String goods) {
        return line(product, pack, pack == null ? "" : pack.text(), quantity, goods, null);
    }

    InvoiceBuilder line(
            String product, @Nullable Pack pack, String text, String quantity, String goods, @Nullable String lineTax) {
        lines.add(new InvoiceLine(
                product,
                pack,
                text,
                Exact.of(quantity),
                Money.of(goods),
                Money.ZERO,
                Money.of("2.40"),
                lineTax == null ? null : Money.of(lineTax),
                Place.of(file).withRow(lines.size() + 2)));
        return this;
    }

    Invoice build() {
        return new Invoice(
                "Quay Wholesale",
                number,
                date,
                creditNote,
                withTax,
                List.copyOf(lines),
                discount,
                delivery,
                Money.of("2.40"),
                Money.ZERO,
                tax,
                null,
                Place.of(file).withRow(2),
                List.of());
    }
}
