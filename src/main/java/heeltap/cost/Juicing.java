package heeltap.cost;

import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Units;
import heeltap.record.SpecAmount;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Whole fruit in a preparation: {@code 25 lemons}. It is juiced where nothing else is liquid, or where the measured yield
 * is nearer to what the batch fills with its juice than to what it fills without. Its peel, slices and wedges give no
 * juice.
 */
final class Juicing {
    private Juicing() {}

    /** @param makesMl the measured yield; null for none */
    static void settle(Recipe recipe, @Nullable Exact makesMl) {
        List<Integer> whole = new ArrayList<>();
        Exact juice = Exact.ZERO;
        Exact others = Exact.ZERO;
        for (int i = 0; i < recipe.rows().size(); i++) {
            Exact ml = juiceMl(recipe.rows().get(i));
            if (ml == null) {
                others = others.plus(recipe.rows().get(i).volume());
            } else {
                whole.add(i);
                juice = juice.plus(ml);
            }
        }
        if (whole.isEmpty()) {
            return;
        }
        boolean liquid = recipe.rows().stream().anyMatch(row -> juiceMl(row) == null && fills(row));
        boolean juiced = makesMl == null ? !liquid : isNearer(others.plus(juice), others, makesMl);
        if (!juiced) {
            whole.stream().map(recipe.rows()::get).forEach(row -> recipe.notice(notJuiced(row)));
            return;
        }
        // of juice alone the measured yield says how much there was: straining does not make it stronger
        Exact measured = makesMl != null && others.isZero() ? makesMl.dividedBy(juice) : Exact.ONE;
        for (int index : whole) {
            Exact ml = juiceMl(recipe.rows().get(index));
            recipe.settleJuice(index, ml == null ? Exact.ZERO : ml.times(measured));
        }
    }

    /** What the pieces of a row yield; null where they are no whole fruit with juice. */
    private static @Nullable Exact juiceMl(Row row) {
        if (row.supply() == null || row.value() == null || row.juiceMl() != null) {
            return null;
        }
        Traits traits = row.supply().traits();
        String unit = row.line().unit();
        boolean pieces = row.line().amount() instanceof SpecAmount.Units
                && traits.measure() == Measure.EACH
                && (unit.isBlank() || Units.isWholePiece(unit));
        return pieces && traits.juiceMl() != null && row.value().isPositive()
                ? row.value().times(traits.juiceMl())
                : null;
    }

    private static boolean fills(Row row) {
        boolean toCome = row.line().amount() instanceof SpecAmount.ToTop;
        return toCome || row.juiceMl() != null || row.isLiquid() || isMeasuredLiquid(row);
    }

    /** Of a liquid of which nothing is known only its volume tells that it is one. */
    private static boolean isMeasuredLiquid(Row row) {
        return row.supply() != null
                && row.value() != null
                && row.value().isPositive()
                && row.supply().traits().measure() == Measure.ML;
    }

    private static boolean isNearer(Exact with, Exact without, Exact makes) {
        return with.minus(makes).abs().isLessThan(without.minus(makes).abs());
    }

    private static Problem notJuiced(Row row) {
        return Problem.notice(
                ProblemKind.VALUE_DOUBTFUL,
                row.line().place(),
                row.line().amountText(),
                "Whether " + row.name() + " is juiced here is not said, so it was counted as adding no juice.",
                "Write \"juice of\" and the number of pieces if it is juiced, or peel as the unit if only its peel goes in.");
    }
}
