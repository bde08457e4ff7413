package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.source.Place;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A row of the sheet Specs. Names and unit are still as written.
 *
 * @param item the drink or preparation it belongs to
 * @param from the first day of this version of the item's spec; null: from the beginning
 * @param ingredient an ingredient, a preparation or another drink
 * @param amount how much, before its unit
 * @param amountText the amount as written, for the workings
 * @param unit as written; empty: the ingredient's measure
 * @param wastePercent added to the amount: amount × (1 + w/100)
 */
public record SpecLine(
        String item,
        @Nullable LocalDate from,
        String ingredient,
        SpecAmount amount,
        String amountText,
        String unit,
        Exact wastePercent,
        String note,
        Place place) {}
