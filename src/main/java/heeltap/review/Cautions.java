package heeltap.review;

import heeltap.cost.Allergens;
import heeltap.cost.CostLine;
import heeltap.cost.DrinkCost;
import heeltap.cost.PreparationCost;
import heeltap.mixture.Contents;
import heeltap.quantity.Measure;
import heeltap.record.WordLists;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The usual cautions, by what a preparation or a drink is made of through every level; local codes decide. */
final class Cautions {
    private static final WordLists WORDS = WordLists.read(Cautions.class, "cautions.txt");
    /** g of acidity as citric in 100 ml: lemon and lime juice have four or more (common practice, no source). */
    private static final double SOUR = 1.0;
    /** % vol from which a liquid is taken to keep by its alcohol (common practice, no source). */
    private static final double STRONG = 20;
    /** % sugar by mass from which a syrup is taken to keep by it (common practice, no source). */
    private static final double SWEET = 65;
    /** % salt by mass from which a brine is taken to keep by it (common practice, no source). */
    private static final double SALTY = 10;
    /** FDA Food Code 3-501.17: ready-to-eat food that needs temperature control, the day of preparation counted. */
    private static final int MOST_DAYS = 7;

    private Cautions() {}

    /** The bar's own words first. */
    static List<String> of(PreparationCost cost, Words words) {
        List<String> cautions = new ArrayList<>();
        if (!cost.preparation().caution().isBlank()) {
            cautions.add(words.say("caution.own", cost.preparation().caution()));
        }
        if (cost.lines().stream().anyMatch(line -> line.form() == CostLine.Form.ACID)) {
            cautions.add(words.say("caution.card.acid"));
        }
        boolean lowAcid = isLowAcid(cost);
        if (isInfusion(cost)) {
            cautions.add(words.say("caution.card.infusion"));
        }
        if (lowAcid) {
            cautions.add(words.say("caution.card.low-acid"));
            if (cost.keepsDays() != null && cost.keepsDays() > MOST_DAYS) {
                cautions.add(words.say("caution.card.long", String.valueOf(cost.keepsDays())));
            }
        }
        kinds(names(cost.use().keySet(), cost.lines(), cost.name()), cost.allergens())
                .forEach(kind -> cautions.add(words.say("caution.card." + kind)));
        return List.copyOf(cautions);
    }

    static List<String> of(DrinkCost cost, Words words) {
        return kinds(names(cost.use().keySet(), cost.lines(), cost.name()), cost.allergens()).stream()
                .map(kind -> words.say("caution.card." + kind))
                .toList();
    }

    private static Set<String> names(Set<String> used, List<CostLine> lines, String name) {
        Set<String> names = new LinkedHashSet<>(used);
        lines.forEach(line -> names.add(line.ingredient()));
        names.add(name);
        return names;
    }

    private static Set<String> kinds(Set<String> names, Set<String> allergens) {
        Set<String> found = new LinkedHashSet<>();
        allergens.stream().map(Allergens::listed).forEach(found::addAll);
        Set<String> named = new LinkedHashSet<>();
        names.stream().map(WORDS::in).forEach(named::addAll);
        Set<String> kinds = new LinkedHashSet<>();
        if (found.contains("eggs") || named.contains("egg")) {
            kinds.add("egg");
        }
        if (found.contains("milk") || named.contains("dairy")) {
            kinds.add("dairy");
        }
        if (found.contains("nuts") || found.contains("peanuts") || named.contains("nuts")) {
            kinds.add("nuts");
        }
        for (String kind : List.of(
                "quinine",
                "cinchona",
                "tonka",
                "calamus",
                "nutmeg",
                "kernels",
                "tobacco",
                "charcoal",
                "supplements",
                "freezing")) {
            if (named.contains(kind)) {
                kinds.add(kind);
            }
        }
        return kinds;
    }

    /** Peel, spice, leaf or root in a liquid. */
    private static boolean isInfusion(PreparationCost cost) {
        boolean solid = cost.lines().stream().anyMatch(line -> line.form() == CostLine.Form.SOLID);
        boolean liquid = cost.lines().stream().anyMatch(line -> line.form() == CostLine.Form.LIQUID);
        return solid && liquid;
    }

    /** Neither sour, strong, sweet nor salty enough to keep; what is not known counts as not. */
    private static boolean isLowAcid(PreparationCost cost) {
        Contents one = cost.contents();
        if (cost.preparation().measure() == Measure.EACH) {
            return false;
        }
        return one.per100Ml(one.acidityAsCitricG()) < SOUR
                && one.abvPercent() < STRONG
                && one.massPercent(one.sugarG()) < SWEET
                && one.massPercent(one.saltG()) < SALTY;
    }
}
