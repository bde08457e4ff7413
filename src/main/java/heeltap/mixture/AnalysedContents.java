package heeltap.mixture;

import heeltap.quantity.Exact;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.jspecify.annotations.Nullable;

/** The contents of one ml or one g that an analysis describes. */
final class AnalysedContents {
    /** Rounding of typed figures that nobody should be scolded for: 0.01 %. */
    private static final double ROUNDING = 1e-4;

    private final boolean unknown;
    /** Whether a density is said. */
    private final boolean said;

    private final double abvPercent;
    /** g/ml; 0 where it is not said. */
    private final double density;
    /** What one ml or g holds of sugar, acids and salt: neither mass nor volume nor alcohol yet. */
    private final Contents dissolved;
    /** Their mass, g. */
    private final double solids;

    AnalysedContents(Analysis analysis) {
        unknown = analysis.isUnknown();
        said = analysis.density() != null;
        density = number(analysis.density());
        abvPercent = number(analysis.abvPercent());
        dissolved = new Contents(
                0,
                0,
                0,
                number(analysis.sugar()) / 100,
                number(analysis.citric()) / 100,
                number(analysis.malic()) / 100,
                number(analysis.tartaric()) / 100,
                number(analysis.otherAcid()) / 100,
                number(analysis.salt()) / 100,
                0,
                false);
        solids = dissolved.sugarG() + dissolved.acidG() + dissolved.saltG();
    }

    Contents ofMl() {
        double ethanol = ethanolPerMl();
        if (density > 0) {
            return measured(parts(density, 1, ethanol));
        }
        double least = solids + ethanol;
        double mass = root(least, 2 + least, grams -> VolumeModel.volume(parts(grams, 1, ethanol)) - 1);
        return computed(parts(mass, 1, ethanol));
    }

    Contents ofGram() {
        if (density > 0) {
            return measured(parts(1, 1 / density, ethanolPerMl() / density));
        }
        double volume = root(0.2, 2, ml -> VolumeModel.volume(parts(1, ml, ethanolIn(ml))) - ml);
        return computed(parts(1, volume, ethanolIn(volume)));
    }

    Optional<String> faultPerMl() {
        return outOfRange().or(() -> {
            double parts = solids + ethanolPerMl();
            if (density > 0) {
                return tooHeavy(parts, density, "100 ml");
            }
            double filled = VolumeModel.volume(parts(parts, 1, ethanolPerMl()));
            return filled > 1 + ROUNDING
                    ? Optional.of("its sugar, acid, salt and alcohol alone fill " + show(100 * filled) + " of 100 ml")
                    : Optional.empty();
        });
    }

    Optional<String> faultPerGram() {
        return outOfRange()
                .or(() -> tooHeavy(solids, 1, "100 g"))
                .or(() -> tooHeavy(solids + ethanolPerMl() * ofGram().volumeMl(), 1, "100 g"));
    }

    private Optional<String> outOfRange() {
        boolean negative = DoubleStream.of(
                        abvPercent,
                        dissolved.sugarG(),
                        dissolved.citricG(),
                        dissolved.malicG(),
                        dissolved.tartaricG(),
                        dissolved.otherAcidG(),
                        dissolved.saltG())
                .anyMatch(value -> value < 0);
        if (negative) {
            return Optional.of("a content is below 0");
        }
        if (said && density <= 0) {
            return Optional.of(density < 0 ? "the density is below 0" : "the density is 0");
        }
        return abvPercent > 100 ? Optional.of("the strength is above 100 % vol") : Optional.empty();
    }

    private static Optional<String> tooHeavy(double parts, double whole, String hundred) {
        return parts > whole * (1 + ROUNDING)
                ? Optional.of("the sugar, acid, salt and alcohol in " + hundred + " weigh " + show(100 * parts)
                        + " g, the whole " + show(100 * whole) + " g")
                : Optional.empty();
    }

    /** A dry solid's volume is never that of its bulk. */
    private Contents measured(Contents parts) {
        return parts.isDry() ? parts.withVolume(VolumeModel.volume(parts), 0, false) : parts;
    }

    private Contents computed(Contents parts) {
        boolean covered = parts.isDry() || VolumeModel.covers(parts);
        return parts.withVolume(parts.volumeMl(), unknown ? parts.volumeMl() : 0, unknown || !covered);
    }

    private Contents parts(double mass, double volume, double ethanol) {
        return new Contents(
                mass,
                volume,
                ethanol,
                dissolved.sugarG(),
                dissolved.citricG(),
                dissolved.malicG(),
                dissolved.tartaricG(),
                dissolved.otherAcidG(),
                dissolved.saltG(),
                0,
                false);
    }

    private double ethanolPerMl() {
        return abvPercent / 100 * Contents.ETHANOL_DENSITY;
    }

    /** g in so many ml that weigh one g: no more than the solids leave room for. */
    private double ethanolIn(double ml) {
        return Math.min(Math.max(0, 1 - solids), ethanolPerMl() * ml);
    }

    /** Where a function that changes its sign crosses 0; its lower end if it is not on the other side there. */
    private static double root(double low, double high, UnivariateFunction function) {
        double atLow = function.value(low);
        return atLow * function.value(high) >= 0 ? low : new BrentSolver(1e-15, 1e-16).solve(200, function, low, high);
    }

    private static String show(double number) {
        return Exact.ofPhysical(number).toSignificant(4).toPlainString();
    }

    private static double number(@Nullable Exact value) {
        return value == null ? 0 : value.toDouble();
    }
}
