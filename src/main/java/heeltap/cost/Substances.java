package heeltap.cost;

import heeltap.mixture.Analysis;
import heeltap.mixture.Contents;
import heeltap.mixture.PublishedComposition;
import heeltap.quantity.Measure;
import heeltap.record.Composition;
import heeltap.record.Ingredient;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.util.List;
import java.util.Optional;

/**
 * What an ingredient is made of: by the book, and where a cell is empty by the published table under the ingredient's
 * name (of a fruit, under the name of its juice).
 *
 * @param analysis of its measure; of a fruit counted in pieces, of its juice in ml, or without one of its flesh in g
 * @param contents of one of its measure: 1 ml, 1 g or a piece put into a drink
 * @param juice of 1 ml of its juice, for amounts of juice; for anything but a fruit the same as 1 ml of it
 * @param table the name of the entry of the published table that filled empty cells; empty for none
 * @param unknown whether nothing at all is known of it, or of pieces neither what one weighs nor what it yields
 * @param problems a composition that cannot be
 */
record Substances(
        Analysis analysis, Contents contents, Contents juice, String table, boolean unknown, List<Problem> problems) {
    static Substances of(Ingredient ingredient) {
        Analysis typed = analysis(ingredient.composition());
        Measure measure = described(ingredient);
        Optional<PublishedComposition> published = published(ingredient);
        Analysis filled =
                published.map(entry -> typed.orElse(entry.in(measure))).orElse(typed);
        if (fault(filled, measure).isEmpty()) {
            boolean used = !filled.equals(typed);
            return of(
                    ingredient,
                    filled,
                    used ? published.map(PublishedComposition::name).orElse("") : "",
                    List.of());
        }
        Optional<String> fault = fault(typed, measure);
        if (fault.isEmpty()) {
            return of(ingredient, typed, "", List.of());
        }
        return of(
                ingredient,
                new Analysis(typed.density(), null, null, null, null, null, null, null),
                "",
                List.of(impossible(ingredient, fault.get())));
    }

    private static Substances of(Ingredient ingredient, Analysis analysis, String table, List<Problem> problems) {
        Contents one = Contents.NOTHING;
        Contents juice = Contents.NOTHING;
        switch (ingredient.measure()) {
            case ML -> {
                one = analysis.ofMl();
                juice = one;
            }
            case G -> {
                one = analysis.isUnknown() ? Contents.NOTHING : analysis.ofGram();
                juice = one.times(one.density());
            }
            case EACH -> {
                if (ingredient.juiceMl() != null) {
                    juice = analysis.ofMl();
                } else if (ingredient.eachGrams() != null && !analysis.isUnknown()) {
                    one = analysis.ofGram().times(ingredient.eachGrams().toDouble());
                }
            }
        }
        boolean uncountable =
                ingredient.measure() == Measure.EACH && ingredient.juiceMl() == null && ingredient.eachGrams() == null;
        return new Substances(analysis, one, juice, table, uncountable || analysis.isUnknown(), problems);
    }

    /** What the typed figures are for: 100 ml or 100 g. */
    private static Measure described(Ingredient ingredient) {
        return switch (ingredient.measure()) {
            case ML -> Measure.ML;
            case G -> Measure.G;
            case EACH -> ingredient.juiceMl() == null ? Measure.G : Measure.ML;
        };
    }

    private static Optional<PublishedComposition> published(Ingredient ingredient) {
        Optional<PublishedComposition> found = PublishedComposition.find(ingredient.name());
        if (ingredient.measure() != Measure.EACH) {
            return found;
        }
        return ingredient.juiceMl() == null
                ? Optional.empty()
                : PublishedComposition.find(ingredient.name() + " juice");
    }

    private static Optional<String> fault(Analysis analysis, Measure measure) {
        return measure == Measure.G ? analysis.faultPerGram() : analysis.faultPerMl();
    }

    private static Analysis analysis(Composition composition) {
        return new Analysis(
                composition.density(),
                composition.abvPercent(),
                composition.sugar(),
                composition.citric(),
                composition.malic(),
                composition.tartaric(),
                composition.otherAcid(),
                composition.salt());
    }

    private static Problem impossible(Ingredient ingredient, String fault) {
        return Problem.notice(
                ProblemKind.VALUE_INVALID,
                ingredient.place(),
                ingredient.name(),
                "What " + ingredient.name() + " is said to hold cannot be: " + fault + ". It was counted as unknown.",
                "Mend its composition on the sheet Ingredients.");
    }
}
