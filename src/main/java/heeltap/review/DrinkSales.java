package heeltap.review;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.time.LocalDate;
import java.util.SortedMap;

/**
 * What a month's till says of one drink, doubles and the like counted as the Names sheet says.
 *
 * @param drink as the book spells it
 * @param sold units paid for, refunds taken off
 * @param complimentary units given away
 * @param netSales money without tax, refunds taken off
 * @param paid the same money on the footing of the menu price: with tax where menu prices include it
 * @param soldByDay units paid for by business day; empty where the sales carry no dates
 * @param pouredByDay units that used stock by business day: sold, refunded and given; undated ones on the last day
 * @param givenByDay the part of them that was given away
 * @param pricedByMenu whether some of the money is the menu price, since the file has none
 * @param moneyKnown whether every unit sold has money, of the till or of the menu
 */
record DrinkSales(
        String drink,
        Exact sold,
        Exact complimentary,
        Money netSales,
        Money paid,
        SortedMap<LocalDate, Exact> soldByDay,
        SortedMap<LocalDate, Exact> pouredByDay,
        SortedMap<LocalDate, Exact> givenByDay,
        boolean pricedByMenu,
        boolean moneyKnown) {
    /** Whether every unit sold has a day. */
    boolean isDated() {
        Exact dated = soldByDay.values().stream().reduce(Exact.ZERO, Exact::plus);
        return dated.equals(sold);
    }
}
