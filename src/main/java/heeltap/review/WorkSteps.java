package heeltap.review;

import heeltap.cost.CostLine;
import heeltap.cost.CostLine.Form;
import heeltap.cost.PreparationCost;
import heeltap.mixture.Contents;
import heeltap.mixture.Mixtures;
import heeltap.mixture.Solubility;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The order of work of a preparation, in sentences. */
final class WorkSteps {
    private final PreparationCost cost;
    private final Words words;

    private WorkSteps(PreparationCost cost, Words words) {
        this.cost = cost;
        this.words = words;
    }

    /** @param makes what a batch makes, as printed; empty where it is not known */
    static List<String> of(PreparationCost cost, String makes, Words words) {
        return new WorkSteps(cost, words).steps(makes);
    }

    private List<String> steps(String makes) {
        List<CostLine> juices = lines(Form.JUICE);
        List<CostLine> liquids = lines(Form.LIQUID);
        List<CostLine> dry = lines(Form.ACID, Form.SOLUBLE);
        List<CostLine> solids = lines(Form.SOLID);
        List<String> steps = new ArrayList<>();
        if (!juices.isEmpty()) {
            steps.add(words.say("sheet.step.juice", names(juices)));
        }
        boolean worked = mix(dry, liquids, juices, steps);
        boolean steeped = !solids.isEmpty() && !liquids.isEmpty();
        if (!solids.isEmpty() && !worked) {
            steps.add(words.say(steeped ? "sheet.step.steep" : "sheet.step.weigh", names(solids)));
        }
        if (cost.preparation().lossPercent().isPositive()) {
            steps.add(words.say(
                    "sheet.step.loss", words.percent(cost.preparation().lossPercent())));
        } else if (steeped) {
            steps.add(words.say("sheet.step.strain"));
        }
        if (!makes.isEmpty()) {
            steps.add(words.say(cost.preparation().makes() == null ? "sheet.step.yield" : "sheet.step.check", makes));
        }
        steps.add(
                cost.keepsDays() == null
                        ? words.say("sheet.step.label")
                        : words.say("sheet.step.use-by", String.valueOf(cost.keepsDays())));
        return steps;
    }

    /**
     * What is dry dissolves in the fewest liquids that can hold it, before the rest comes in.
     *
     * @return whether no liquid can, so that the solids come in at once
     */
    private boolean mix(List<CostLine> dry, List<CostLine> liquids, List<CostLine> juices, List<String> steps) {
        List<CostLine> all = Stream.concat(liquids.stream(), juices.stream()).toList();
        if (dry.isEmpty()) {
            if (!liquids.isEmpty()) {
                steps.add(words.say(
                        all.size() == 1 ? "sheet.step.measure-one" : "sheet.step.measure",
                        names(liquids.size() == 1 && !juices.isEmpty() ? all : liquids)));
            }
        } else if (all.isEmpty()) {
            steps.add(words.say("sheet.step.weigh", names(dry)));
        } else if (!liquids.isEmpty() && !juices.isEmpty() && dissolves(dry, liquids)) {
            steps.add(words.say("sheet.step.dissolve-rest", names(dry), names(liquids), names(juices)));
        } else if (dissolves(dry, all)) {
            steps.add(words.say("sheet.step.dissolve", names(dry), names(all)));
        } else {
            List<CostLine> whole =
                    Stream.concat(all.stream(), lines(Form.SOLID).stream()).toList();
            steps.add(words.say("sheet.step.stir-in", names(dry), names(whole)));
            return true;
        }
        return false;
    }

    private static boolean dissolves(List<CostLine> dry, List<CostLine> liquids) {
        List<Contents> parts = Stream.concat(dry.stream(), liquids.stream())
                .map(CostLine::holds)
                .toList();
        return Solubility.beyond(Mixtures.mix(parts)).isEmpty();
    }

    private List<CostLine> lines(Form... forms) {
        List<Form> wanted = List.of(forms);
        return cost.lines().stream()
                .filter(line -> wanted.contains(line.form()))
                .toList();
    }

    private static String names(List<CostLine> lines) {
        return lines.stream().map(CostLine::ingredient).distinct().collect(Collectors.joining("; "));
    }
}
