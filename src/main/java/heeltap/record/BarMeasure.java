package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.source.Place;

/**
 * A row of the sheet Measures: the bar's own size of a measure without a standard.
 *
 * @param unit such as {@code dash}
 * @param ml its volume; for {@code pinch} its mass in g
 */
public record BarMeasure(String unit, Exact ml, Place place) {}
