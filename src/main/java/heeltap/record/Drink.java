package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.source.Place;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A row of the sheet Drinks.
 *
 * @param name as written
 * @param price as the guest reads it; null where the cell is empty
 * @param category empty: none
 * @param code the till's code; empty: none
 * @param waterPercent dilution in percent of the mixed volume; null: the method's usual one
 * @param serveMl what a serve holds before water from ice, in ml, for lines that top up; null: not said
 * @param minutes labour a serve
 * @param onMenuFrom first day on the menu; null: always was
 * @param onMenuUntil last day on the menu; null: still is
 * @param holdPrice never suggest a change
 * @param fixedCost cost of a serve of a bought-in item without a spec; null: it has a spec
 * @param inMenuAnalysis null: as its category says
 */
public record Drink(
        String name,
        @Nullable Money price,
        String category,
        String code,
        Method method,
        @Nullable Exact waterPercent,
        @Nullable Exact serveMl,
        Exact minutes,
        @Nullable LocalDate onMenuFrom,
        @Nullable LocalDate onMenuUntil,
        boolean holdPrice,
        @Nullable Money fixedCost,
        @Nullable Boolean inMenuAnalysis,
        Place place) {}
