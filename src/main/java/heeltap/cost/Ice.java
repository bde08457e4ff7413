package heeltap.cost;

import heeltap.mixture.IceConditions;
import heeltap.quantity.Exact;
import heeltap.record.IceWater;
import heeltap.record.Method;
import heeltap.record.Setting;
import heeltap.record.Settings;
import java.util.Optional;

/**
 * How the bar chills with ice, by its settings.
 *
 * @param settings the bar's
 */
record Ice(Settings settings) {
    private static final double J_A_GRAM = 10;

    /** For the heat balance; empty where the settings want the usual percent, or the method lets no ice melt by itself. */
    Optional<IceConditions> conditions(Method method) {
        if (settings.get(Setting.WATER_FROM_ICE) != IceWater.HEAT_BALANCE) {
            return Optional.empty();
        }
        return switch (method) {
            case SHAKEN -> Optional.of(inTin(Setting.SHAKEN_ENDS_AT, Setting.SHAKEN_HEAT));
            case STIRRED -> Optional.of(inTin(Setting.STIRRED_ENDS_AT, Setting.STIRRED_HEAT));
            case THROWN -> Optional.of(inTin(Setting.THROWN_ENDS_AT, Setting.THROWN_HEAT));
            case BUILT ->
                Optional.of(conditions(
                        Setting.BUILT_LIQUIDS_START_AT,
                        Setting.BUILT_ENDS_AT,
                        Setting.ICE_TO_BUILT_DRINK,
                        Setting.BUILT_HEAT));
            // a blender takes in all its ice, and without a method there is none
            case BLENDED, NONE -> Optional.empty();
        };
    }

    private IceConditions inTin(Setting<Exact> end, Setting<Exact> heat) {
        return conditions(Setting.LIQUIDS_START_AT, end, Setting.ICE_TO_DRINK, heat);
    }

    /** What starts colder than it is wished to end stays as cold as it is; only ice at 0 °C is wet. */
    private IceConditions conditions(
            Setting<Exact> start, Setting<Exact> end, Setting<Exact> ice, Setting<Exact> heat) {
        double startC = number(start);
        double iceC = number(Setting.ICE_STARTS_AT);
        double wetness = iceC < 0 ? 0 : number(Setting.WET_ICE_PERCENT) / 100;
        return new IceConditions(
                startC, Math.min(startC, number(end)), number(ice), iceC, wetness, J_A_GRAM * number(heat), null);
    }

    private double number(Setting<Exact> setting) {
        return settings.get(setting).toDouble();
    }
}
