package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.source.Place;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * All used sales rows of one till name, code, day and kind in one sheet, added up while reading.
 *
 * @param item the till's name; empty where the export has only codes
 * @param code the till's code; empty where there is none
 * @param day the business day; null where the export has no dates
 * @param kind see {@link SaleKind}
 * @param rows how many rows stand behind it
 * @param quantity units as printed, before {@code Times}; for refunds and voids the number taken back, positive
 * @param net money without tax; for refunds the money given back, positive; null where the file has no money at all
 * @param paid the same money with the tax that the till itself tells; null where it does not
 * @param first the first of the rows
 */
public record SaleTotal(
        String item,
        String code,
        @Nullable LocalDate day,
        SaleKind kind,
        int rows,
        Exact quantity,
        @Nullable Money net,
        @Nullable Money paid,
        Place first) {}
