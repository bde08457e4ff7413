package heeltap.mixture;

import java.util.List;

/**
 * Mixes contents. Masses add exactly. The volume is that of the model for all parts together, and what each part's own
 * volume differed from its model (pulp, fat, a typed density) is carried along: V = V*(Σ masses) + Σ (Vᵢ - V*ᵢ). So the
 * order and nesting of mixing change nothing, equal liquids add up exactly, and a batch scales to any size.
 *
 * <p>Outside the ranges of the published tables (sugar above 70 % by mass, salt 26 %, citric acid 30 %, malic 40 %,
 * tartaric 2 %, more than a trace dissolved in alcohol above 60 % by mass) each substance adds the volume it has at the
 * end of its range, and the result is marked estimated; so it is where more than 2 % of the volume is not explained by
 * what is known of the parts, or more than 1 % of unknown liquids are in it.
 */
public final class Mixtures {
    private static final double UNEXPLAINED = 0.02;
    private static final double UNKNOWN = 0.01;
    private static final double SAME = 1e-12;

    private Mixtures() {}

    /** The parts together, at 20 °C; nothing for no parts. */
    public static Contents mix(List<Contents> parts) {
        List<Contents> present =
                parts.stream().filter(part -> !part.isNothing()).toList();
        if (present.isEmpty()) {
            return Contents.NOTHING;
        }
        Contents first = present.get(0);
        Contents sum = present.stream().reduce(Contents.NOTHING, Mixtures::plus);
        if (present.stream().allMatch(part -> alike(first, part))) {
            return sum;
        }
        double unexplained = sum.volumeMl();
        for (Contents part : present) {
            unexplained -= VolumeModel.volume(part);
        }
        double volume = VolumeModel.volume(sum) + unexplained;
        boolean estimated = !VolumeModel.covers(sum)
                || Math.abs(unexplained) > UNEXPLAINED * volume
                || sum.unknownMl() > UNKNOWN * volume;
        return sum.withVolume(volume, sum.unknownMl(), estimated);
    }

    private static Contents plus(Contents one, Contents other) {
        return new Contents(
                one.massG() + other.massG(),
                one.volumeMl() + other.volumeMl(),
                one.ethanolG() + other.ethanolG(),
                one.sugarG() + other.sugarG(),
                one.citricG() + other.citricG(),
                one.malicG() + other.malicG(),
                one.tartaricG() + other.tartaricG(),
                one.otherAcidG() + other.otherAcidG(),
                one.saltG() + other.saltG(),
                one.unknownMl() + other.unknownMl(),
                one.estimated() || other.estimated());
    }

    /** Whether both are the same liquid, in whatever amounts. */
    private static boolean alike(Contents one, Contents other) {
        Contents scaled = other.times(one.massG() / other.massG());
        return near(one.volumeMl(), scaled.volumeMl(), one.volumeMl())
                && near(one.ethanolG(), scaled.ethanolG(), one.massG())
                && near(one.sugarG(), scaled.sugarG(), one.massG())
                && near(one.citricG(), scaled.citricG(), one.massG())
                && near(one.malicG(), scaled.malicG(), one.massG())
                && near(one.tartaricG(), scaled.tartaricG(), one.massG())
                && near(one.otherAcidG(), scaled.otherAcidG(), one.massG())
                && near(one.saltG(), scaled.saltG(), one.massG());
    }

    private static boolean near(double one, double other, double scale) {
        return Math.abs(one - other) <= SAME * scale;
    }
}
