package heeltap.cost;

import heeltap.match.Match;
import heeltap.mixture.Contents;
import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.quantity.Units;
import heeltap.record.SpecAmount;
import heeltap.record.SpecLine;
import org.jspecify.annotations.Nullable;

/**
 * A spec line on its way to an amount.
 *
 * @param name of what it asks for, as the book spells it; as written where it is unknown
 * @param supply what it asks for; null where that is unknown or leads back to the item itself
 * @param value how much, in the supply's measure, before waste; null as long as it is not worked out
 * @param juiceMl where it is juice of a thing counted in pieces or weighed whole, ml of it; else null
 * @param fruitShare what a line of its peel or juice bears of a fruit
 * @param left the part of it that stays in the glass, from 0 to 1; below 1 for a rinse, which costs and uses all of it
 */
record Row(
        SpecLine line,
        String name,
        @Nullable Supply supply,
        @Nullable Exact value,
        @Nullable Exact juiceMl,
        FruitShare fruitShare,
        Exact left) {
    Row with(@Nullable Exact newValue, @Nullable Exact newJuiceMl) {
        return new Row(line, name, supply, newValue, newJuiceMl, fruitShare, left);
    }

    /** Whether the line asks for the peel of a fruit that has juice. */
    boolean isPeel() {
        return supply != null && supply.traits().juiceMl() != null && Units.isPeel(line.unit());
    }

    /** How much of a piece the line bears: peel and juice of one fruit share it, so that nothing is paid twice. */
    private Exact share() {
        if (isPeel()) {
            return fruitShare.peel();
        }
        return juiceMl == null ? Exact.ONE : fruitShare.juice();
    }

    boolean isToTarget() {
        return line.amount() instanceof SpecAmount.ToTarget;
    }

    /** With waste: what is taken for it; of a fruit that is peeled and juiced, its share. */
    @Nullable Exact taken() {
        return value == null
                ? null
                : value.times(Exact.ONE.plus(line.wastePercent().percent())).times(share());
    }

    /** What it puts into the mix; nothing where the amount is not known. */
    Contents contents() {
        if (supply == null || value == null) {
            return Contents.NOTHING;
        }
        return juiceMl == null
                ? supply.contents().times(value.times(left).toDouble())
                : supply.juice().times(juiceMl.toDouble());
    }

    /** ml that it fills; 0 for a piece that is put in whole. */
    Exact volume() {
        if (juiceMl != null) {
            return juiceMl;
        }
        return value != null && supply != null && supply.traits().measure() == Measure.ML
                ? value.times(left)
                : Exact.ofPhysical(contents().volumeMl());
    }

    /** Something weighed of which nothing says what it fills: a peel, a spice, a leaf. */
    boolean fillsUnknown() {
        return supply != null
                && value != null
                && supply.traits().measure() == Measure.G
                && juiceMl == null
                && supply.contents().volumeMl() == 0;
    }

    /** A liquid, as against a dry solid: no solution is nine tenths sugar, acid and salt. */
    boolean isLiquid() {
        Contents contents = contents();
        return contents.volumeMl() > 0
                && contents.sugarG() + contents.acidG() + contents.saltG() < 0.9 * contents.massG();
    }

    private CostLine.Form form() {
        if (juiceMl != null) {
            return CostLine.Form.JUICE;
        }
        boolean measured = supply != null && supply.traits().measure() == Measure.ML;
        Contents held = supply == null ? Contents.NOTHING : supply.contents();
        double dry = held.sugarG() + held.acidG() + held.saltG();
        if (held.massG() > 0 && dry >= 0.9 * held.massG()) {
            return held.acidG() > 0.5 * held.massG() ? CostLine.Form.ACID : CostLine.Form.SOLUBLE;
        }
        boolean served = supply != null && supply.kind() != Match.Kind.INGREDIENT;
        return measured || served || isLiquid() ? CostLine.Form.LIQUID : CostLine.Form.SOLID;
    }

    CostLine costLine() {
        Money whole = supply == null ? null : supply.unitCost();
        Money unitCost = whole == null ? null : whole.times(share());
        Exact taken = taken();
        String unit = line.unit().isBlank() ? "" : " " + line.unit();
        return new CostLine(
                name,
                supply == null ? null : supply.kind(),
                line.amountText() + unit,
                supply == null || value == null
                        ? null
                        : new Amount(value, supply.traits().measure()),
                line.wastePercent(),
                unitCost,
                whole == null || taken == null ? null : whole.times(taken),
                isToTarget(),
                form(),
                contents(),
                line,
                line.note(),
                line.place());
    }
}
