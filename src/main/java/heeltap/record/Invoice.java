package heeltap.record;

import heeltap.quantity.Money;
import heeltap.source.Place;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A supplier's invoice or credit note. All money of a credit note is negative.
 *
 * @param supplier as printed; empty where the file does not say
 * @param number as printed; empty where the file does not say
 * @param date null where the file does not say
 * @param creditNote whether it is one
 * @param pricesIncludeTax whether the lines' money holds tax
 * @param lines in printed order
 * @param discount off the invoice as a whole, positive (negative on a credit note); shared over the lines by value
 * @param delivery delivery and other charges on the invoice as a whole
 * @param deposit returnable deposits of the invoice, those beside its lines included
 * @param depositReturned the part of it that was given back, positive: {@code paid = deposit + depositReturned}
 * @param tax tax printed for the invoice or added up from its lines; null where none is printed
 * @param printedTotal what the paper says is to pay, with tax; null where it does not
 * @param place its first row
 * @param dates every date that its rows bear, in order; one invoice has one, so more are told
 */
public record Invoice(
        String supplier,
        String number,
        @Nullable LocalDate date,
        boolean creditNote,
        boolean pricesIncludeTax,
        List<InvoiceLine> lines,
        Money discount,
        Money delivery,
        Money deposit,
        Money depositReturned,
        @Nullable Money tax,
        @Nullable Money printedTotal,
        Place place,
        List<LocalDate> dates) {
    public Invoice {
        dates = List.copyOf(dates);
    }

    /** The files in which its lines stand, in order; one invoice is in one, so more are told. */
    public List<String> files() {
        return lines.stream()
                .map(line -> line.place().file())
                .distinct()
                .sorted()
                .toList();
    }
}
