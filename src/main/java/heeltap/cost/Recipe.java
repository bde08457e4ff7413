package heeltap.cost;

import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Money;
import heeltap.quantity.Unit;
import heeltap.quantity.Units;
import heeltap.record.SpecAmount;
import heeltap.record.SpecLine;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The lines of one item, worked out and added up. Lines that cannot be worked out leave a cause; the others stay in use.
 */
final class Recipe {
    private final String item;
    private final Units units;
    private final List<Row> rows = new ArrayList<>();
    private final Set<Problem> told = new LinkedHashSet<>();
    private final Map<Problem, Cause> causes = new LinkedHashMap<>();
    private final List<Problem> notices = new ArrayList<>();
    private final Map<String, FruitShare> fruitShares;
    private final Exact rinseLeft;

    /**
     * @param fruitShares of fruit that is both peeled and juiced: what its lines bear of it, by name
     * @param rinseLeft the part of a rinse that stays in the glass, from 0 to 1
     */
    Recipe(String item, Units units, Map<String, FruitShare> fruitShares, Exact rinseLeft) {
        this.item = item;
        this.units = units;
        this.fruitShares = fruitShares;
        this.rinseLeft = rinseLeft;
    }

    void fault(Problem problem) {
        causes.putIfAbsent(problem, new Cause(item, problem));
    }

    void notice(Problem problem) {
        notices.add(problem);
    }

    /** A line of something unknown, or of something that leads back to this item: it is told by a fault of its own. */
    /** A line of an unknown name, of which the reading of the book has told already why it cannot be costed. */
    void addUnclear(SpecLine line, SpecAmount.Unclear unclear) {
        Problem problem = unclearAmount(line, unclear);
        told.add(problem);
        fault(problem);
        addUnknown(line, line.ingredient());
    }

    private static Problem unclearAmount(SpecLine line, SpecAmount.Unclear unclear) {
        return Problem.fault(
                ProblemKind.SPEC_FAULT,
                line.place(),
                line.amountText(),
                unclear.reason(),
                "Write an amount and a unit.");
    }

    /** Faults that the reader of the book has been told of where they stand. */
    Set<Problem> told() {
        return told;
    }

    void addUnknown(SpecLine line, String name) {
        rows.add(new Row(line, name, null, null, null, FruitShare.WHOLE, Exact.ONE));
    }

    /** @param times how many of the supply one of the written name is */
    void add(SpecLine line, Supply supply, Exact times) {
        supply.causes().forEach(cause -> causes.putIfAbsent(cause.problem(), cause));
        Row row = new Row(
                line,
                supply.name(),
                supply,
                null,
                null,
                fruitShares.getOrDefault(supply.name(), FruitShare.WHOLE),
                left(line));
        LineAmount amount = amount(line, supply, times);
        if (amount == null) {
            rows.add(row);
            return;
        }
        Problem problem = amount.problem();
        if (problem != null && supply.causes().isEmpty()) {
            fault(problem);
        }
        rows.add(row.with(amount.value(), amount.juiceMl()));
    }

    private Exact left(SpecLine line) {
        return line.amount() instanceof SpecAmount.Rinse ? rinseLeft : Exact.ONE;
    }

    /** Null for an amount that hangs on the other lines. */
    private @Nullable LineAmount amount(SpecLine line, Supply supply, Exact times) {
        SpecAmount amount = line.amount();
        if (amount instanceof SpecAmount.Units number) {
            return isPart(line)
                    ? null
                    : LineAmount.of(units, number.number().times(times), line.unit(), supply, line.place());
        }
        if (amount instanceof SpecAmount.Rinse) {
            return LineAmount.rinse(units, line.unit(), supply, line.place());
        }
        if (amount instanceof SpecAmount.JuiceOf juice) {
            return LineAmount.juice(juice.pieces().times(times), line.amountText(), supply, line.place());
        }
        if (amount instanceof SpecAmount.Unclear unclear) {
            Problem problem = unclearAmount(line, unclear);
            told.add(problem);
            return LineAmount.fault(problem);
        }
        return null;
    }

    private boolean isPart(SpecLine line) {
        return units.find(line.unit(), Measure.ML)
                .filter(unit -> unit.kind() == Unit.Kind.PART)
                .isPresent();
    }

    /** Parts share out what a serve holds: ml = serve × part / all parts. */
    void shareOutParts(@Nullable Exact serveMl) {
        Exact all = Exact.ZERO;
        List<Integer> parts = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).line().amount() instanceof SpecAmount.Units number
                    && isPart(rows.get(i).line())) {
                parts.add(i);
                all = all.plus(number.number());
            }
        }
        for (int i : parts) {
            SpecLine line = rows.get(i).line();
            if (serveMl == null || !all.isPositive()) {
                fault(specFault(
                        line,
                        "Parts share out the Serve ml of a drink, and there is none here.",
                        "Fill in Serve ml, or write ml."));
            } else if (line.amount() instanceof SpecAmount.Units number) {
                settle(i, serveMl.times(number.number()).dividedBy(all));
            }
        }
    }

    /** The line {@code to top} is what the others leave of the whole. */
    void fillUp(@Nullable Exact wholeMl) {
        List<Integer> tops = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).line().amount() instanceof SpecAmount.ToTop) {
                tops.add(i);
            }
        }
        for (int i : tops) {
            SpecLine line = rows.get(i).line();
            if (tops.size() > 1) {
                fault(specFault(line, "Two lines are to top.", "Give all but one of them an amount."));
            } else if (wholeMl == null) {
                fault(specFault(
                        line,
                        "How much there is to fill is not known.",
                        "Fill in Serve ml of the drink, or Makes of the preparation in ml."));
            } else if (rows.stream().allMatch(row -> row.value() != null || hangsOnOthers(row))) {
                topUp(i, wholeMl);
            }
        }
    }

    private static boolean hangsOnOthers(Row row) {
        return row.line().amount() instanceof SpecAmount.ToTop || row.isToTarget();
    }

    private void topUp(int index, Exact wholeMl) {
        Exact filled = rows.stream().map(Row::volume).reduce(Exact.ZERO, Exact::plus);
        SpecLine line = rows.get(index).line();
        rows.stream().filter(Row::fillsUnknown).forEach(row -> notice(countedAsNothing(row)));
        if (filled.isGreaterThan(wholeMl)) {
            fault(specFault(
                    line,
                    "The other lines hold " + filled + " ml, more than the " + wholeMl + " ml to fill.",
                    "Correct the amounts or the size."));
        } else {
            settle(index, wholeMl.minus(filled));
        }
    }

    private static Problem specFault(SpecLine line, String reason, String remedy) {
        String raw = line.unit().isBlank() ? line.amountText() : line.amountText() + " " + line.unit();
        return Problem.fault(ProblemKind.SPEC_FAULT, line.place(), raw, reason, remedy);
    }

    private static Problem countedAsNothing(Row row) {
        return Problem.notice(
                ProblemKind.DENSITY_MISSING,
                row.line().place(),
                row.line().ingredient(),
                "What " + row.name() + " fills is not known, so it was counted as adding no volume.",
                "Fill in Density or what it is made of on the sheet Ingredients, if it stays in the liquid.");
    }

    private void settle(int index, Exact ml) {
        Row row = rows.get(index);
        Supply supply = row.supply();
        if (supply == null) {
            return;
        }
        LineAmount amount = LineAmount.of(
                new Amount(ml, Measure.ML),
                row.line().amountText(),
                supply,
                row.line().place());
        Problem problem = amount.problem();
        if (problem != null && supply.causes().isEmpty()) {
            fault(problem);
        }
        rows.set(index, row.with(amount.value(), amount.juiceMl()));
    }

    /** The i-th row is so much juice of the pieces it counts. */
    void settleJuice(int index, Exact ml) {
        Row row = rows.get(index);
        rows.set(index, row.with(row.value(), ml));
    }

    /** Grams of the i-th row, solved from a target. */
    void settleGrams(int index, Exact grams) {
        Row row = rows.get(index);
        Supply supply = row.supply();
        if (supply == null) {
            return;
        }
        LineAmount amount = LineAmount.of(
                new Amount(grams, Measure.G),
                row.line().amountText(),
                supply,
                row.line().place());
        Problem problem = amount.problem();
        if (problem != null) {
            fault(problem);
        }
        rows.set(index, row.with(amount.value(), null));
    }

    List<Row> rows() {
        return rows;
    }

    RowSums sums() {
        return new RowSums(rows);
    }

    Set<Cause> causes() {
        return new LinkedHashSet<>(causes.values());
    }

    List<Problem> notices() {
        return notices.stream().distinct().sorted(Problem.ORDER).toList();
    }

    /** Whether the amount of every line is known. */
    boolean isComplete() {
        return rows.stream().allMatch(row -> row.value() != null);
    }

    List<CostLine> costLines() {
        return rows.stream().map(Row::costLine).toList();
    }

    /** Null where anything is at fault. */
    @Nullable Money cost() {
        Money sum = Money.ZERO;
        for (CostLine line : costLines()) {
            if (line.cost() == null || !causes.isEmpty()) {
                return null;
            }
            sum = sum.plus(line.cost());
        }
        return sum;
    }

    /** Says of each thing weighed of which nothing is known that it adds no volume. */
    void noticeUnknownVolumes() {
        rows.stream().filter(Row::fillsUnknown).forEach(row -> notice(countedAsNothing(row)));
    }
}
