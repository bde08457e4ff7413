package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Unit;
import heeltap.source.Place;
import org.jspecify.annotations.Nullable;

/**
 * A row of the sheet Preparations: something made in house.
 *
 * @param name as written
 * @param makes the measured yield in {@code makesUnit}; null: computed from the lines
 * @param makesUnit unit of {@code makes}; null: {@code measure}
 * @param lossPercent of a computed yield, 0 to below 100
 * @param minutes labour a batch
 * @param keepsDays null: not said
 * @param targetCitric g per 100 ml of the base liquid; null: no target; so too malic
 * @param targetSalt % by mass of the finished liquid; so too sugar
 * @param measure the base measure of the finished thing
 * @param caution the bar's own words; empty for none
 */
public record Preparation(
        String name,
        @Nullable Exact makes,
        @Nullable Unit makesUnit,
        Exact lossPercent,
        Exact minutes,
        @Nullable Integer keepsDays,
        @Nullable Exact targetCitric,
        @Nullable Exact targetMalic,
        @Nullable Exact targetSalt,
        @Nullable Exact targetSugar,
        Measure measure,
        String caution,
        Place place) {}
