package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.source.Place;

/**
 * A counted row.
 *
 * @param item an ingredient or a preparation, as written
 * @param count may have decimals ("3.4 bottles")
 * @param unit as written; empty: bottles where the bottle's size is known, else the measure
 * @param location as written; empty for none
 */
public record StockCount(String item, Exact count, String unit, String location, Place place) {}
