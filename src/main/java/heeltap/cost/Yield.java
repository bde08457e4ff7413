package heeltap.cost;

import heeltap.mixture.Analysis;
import heeltap.mixture.Contents;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Unit;
import heeltap.record.Preparation;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import org.jspecify.annotations.Nullable;

/**
 * What a batch of a preparation makes.
 *
 * @param makes in the preparation's measure; null where it is not known
 * @param contents of one of its measure
 */
record Yield(@Nullable Exact makes, Contents contents) {
    private static final Yield UNKNOWN = new Yield(null, Contents.NOTHING);

    /** Measured, as typed; else the lines' volume (for g their mass) less {@code Loss percent}. */
    static Yield of(Preparation preparation, Recipe recipe) {
        return preparation.makes() == null
                ? computed(preparation, recipe)
                : typed(preparation, preparation.makes(), recipe);
    }

    private static Yield typed(Preparation preparation, Exact makes, Recipe recipe) {
        if (!preparation.lossPercent().isZero()) {
            recipe.fault(fault(
                    preparation,
                    "It has a measured yield and a loss percent: which of the two holds is not clear.",
                    "Clear one of the two."));
        }
        if (!makes.isPositive()) {
            recipe.fault(fault(preparation, "It makes nothing.", "Write what a batch makes, or leave the cell empty."));
            return UNKNOWN;
        }
        Contents batch = recipe.sums().contents();
        Exact value = toMeasure(preparation, makes, batch, recipe);
        if (value == null || !value.isPositive()) {
            return UNKNOWN;
        }
        Exact unknown = recipe.sums().unknownGrams();
        Contents each = perUnit(preparation.measure(), batch, batch.massG() + unknown.toDouble(), value.toDouble());
        boolean strained = unknown.isPositive() && preparation.measure() == Measure.ML;
        return new Yield(value, strained ? liquid(each) : each);
    }

    /** What nobody described (grounds, leaves, peel) may stay in the strainer: what one ml weighs follows from the rest. */
    private static Contents liquid(Contents each) {
        Analysis known = new Analysis(
                null,
                hundredfold(each.ethanolMl()),
                hundredfold(each.sugarG()),
                hundredfold(each.citricG()),
                hundredfold(each.malicG()),
                hundredfold(each.tartaricG()),
                hundredfold(each.otherAcidG()),
                hundredfold(each.saltG()));
        if (known.faultPerMl().isPresent()) {
            return each;
        }
        Contents one = known.ofMl();
        return new Contents(
                one.massG(),
                1,
                each.ethanolG(),
                each.sugarG(),
                each.citricG(),
                each.malicG(),
                each.tartaricG(),
                each.otherAcidG(),
                each.saltG(),
                each.unknownMl(),
                each.estimated());
    }

    private static Exact hundredfold(double perMl) {
        return Exact.ofPhysical(100 * perMl);
    }

    /** {@code Makes} in the preparation's measure. */
    private static @Nullable Exact toMeasure(Preparation preparation, Exact makes, Contents batch, Recipe recipe) {
        Unit unit = preparation.makesUnit();
        Measure written = unit == null ? preparation.measure() : measure(unit);
        if (written == null) {
            recipe.fault(Problem.fault(
                    ProblemKind.UNIT_UNKNOWN,
                    preparation.place(),
                    unit == null ? "" : unit.name(),
                    "What a batch makes cannot be measured in this unit.",
                    "Use a unit of volume or mass, or each."));
            return null;
        }
        Amount amount = new Amount(unit == null ? makes : makes.times(unit.factor()), written);
        Exact density = isKnown(batch) ? Exact.ofPhysical(batch.density()) : null;
        Traits.Converted converted = Traits.of(preparation.measure(), density).toMeasure(amount);
        if (converted.value() == null) {
            recipe.fault(Conversions.unfit(
                    preparation.place(),
                    makes.toString(),
                    preparation.name(),
                    preparation.measure(),
                    converted.missing(),
                    amount));
        }
        return converted.value();
    }

    private static @Nullable Measure measure(Unit unit) {
        return switch (unit.kind()) {
            case VOLUME -> Measure.ML;
            case MASS -> Measure.G;
            case COUNT -> Measure.EACH;
            case SERVE, BATCH, PART -> null;
        };
    }

    private static Yield computed(Preparation preparation, Recipe recipe) {
        if (!recipe.isComplete() || recipe.rows().isEmpty()) {
            return UNKNOWN;
        }
        Exact kept = Exact.ONE.minus(preparation.lossPercent().percent());
        if (!kept.isPositive()) {
            recipe.fault(fault(preparation, "All of it is lost.", "Write a loss percent below 100."));
            return UNKNOWN;
        }
        return switch (preparation.measure()) {
            case ML -> computedMl(preparation, recipe, kept);
            case G -> computedGrams(preparation, recipe, kept);
            case EACH -> {
                recipe.fault(fault(preparation, "How many pieces it makes is not said.", "Fill in Makes."));
                yield UNKNOWN;
            }
        };
    }

    private static Yield computedMl(Preparation preparation, Recipe recipe, Exact kept) {
        Contents batch = recipe.sums().contents();
        recipe.noticeUnknownVolumes();
        if (batch.volumeMl() <= 0) {
            recipe.fault(fault(preparation, "What its lines fill is not known.", "Fill in Makes."));
            return UNKNOWN;
        }
        Exact makes = Exact.ofPhysical(batch.volumeMl()).times(kept);
        double whole = batch.volumeMl();
        return new Yield(makes, perUnit(Measure.ML, batch, batch.massG(), whole));
    }

    private static Yield computedGrams(Preparation preparation, Recipe recipe, Exact kept) {
        Exact grams = Exact.ZERO;
        for (Row row : recipe.rows()) {
            Exact mass = grams(row);
            if (mass == null) {
                recipe.fault(Problem.fault(
                        ProblemKind.DENSITY_MISSING,
                        row.line().place(),
                        row.line().ingredient(),
                        "What " + row.name() + " weighs is not known, so neither is what " + preparation.name()
                                + " makes in g.",
                        "Fill in its Density (of pieces, Each g) on the sheet Ingredients, or Makes."));
                return UNKNOWN;
            }
            grams = grams.plus(mass);
        }
        if (!grams.isPositive()) {
            recipe.fault(fault(preparation, "Its lines weigh nothing.", "Fill in Makes."));
            return UNKNOWN;
        }
        Contents batch = recipe.sums().contents();
        return new Yield(grams.times(kept), perUnit(Measure.G, batch, grams.toDouble(), grams.toDouble()));
    }

    private static @Nullable Exact grams(Row row) {
        Supply supply = row.supply();
        Exact value = row.value();
        if (supply == null || value == null) {
            return null;
        }
        Traits traits = supply.traits();
        if (traits.measure() == Measure.G && row.juiceMl() == null) {
            return value;
        }
        if (traits.measure() == Measure.EACH && row.juiceMl() == null) {
            return traits.eachGrams() == null ? null : value.times(traits.eachGrams());
        }
        if (traits.measure() == Measure.ML && traits.density() != null) {
            return value.times(traits.density());
        }
        return isKnown(row.contents()) ? Exact.ofPhysical(row.contents().massG()) : null;
    }

    /** Whether what it is made of is known well enough for its density: all but a hundredth of its volume. */
    static boolean isKnown(Contents contents) {
        return contents.massG() > 0 && contents.volumeMl() > 0 && contents.unknownMl() <= 0.01 * contents.volumeMl();
    }

    /** The batch over what it makes: of ml the volume is 1 as measured, of g the mass. */
    private static Contents perUnit(Measure measure, Contents batch, double massG, double makes) {
        double mass = measure == Measure.G ? 1 : massG / makes;
        double volume = measure == Measure.ML
                ? 1
                : measure == Measure.G && massG > 0 ? batch.volumeMl() / massG : batch.volumeMl() / makes;
        Contents each = batch.times(1 / makes);
        return new Contents(
                mass,
                volume,
                each.ethanolG(),
                each.sugarG(),
                each.citricG(),
                each.malicG(),
                each.tartaricG(),
                each.otherAcidG(),
                each.saltG(),
                Math.min(volume, each.unknownMl()),
                each.estimated());
    }

    private static Problem fault(Preparation preparation, String reason, String remedy) {
        return Problem.fault(ProblemKind.SPEC_FAULT, preparation.place(), preparation.name(), reason, remedy);
    }
}
