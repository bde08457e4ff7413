package heeltap.match;

import heeltap.match.Match.Kind;
import heeltap.quantity.Exact;
import heeltap.record.Book;
import heeltap.record.Drink;
import heeltap.record.Ingredient;
import heeltap.record.KnownNames;
import heeltap.record.NameRule;
import heeltap.record.NameRule.Where;
import heeltap.record.Preparation;
import heeltap.source.Problem;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All names the book knows. A written name joins by exact name after folding, then by its code, then by the sheet Names,
 * last by a code that stands where the name should; never by likeness. A name that could mean two things joins nothing.
 */
public final class NameBook implements KnownNames {
    private static final int NEAREST = 3;
    private static final List<Kind> IN_SPECS = List.of(Kind.INGREDIENT, Kind.PREPARATION, Kind.DRINK);

    private final Map<Kind, NameList> lists = new EnumMap<>(Kind.class);
    private final NameList codes = new NameList("till code");
    private final Map<Where, RuleList> rules = new EnumMap<>(Where.class);
    private final List<Problem> problems = new ArrayList<>();

    private NameBook(Book book) {
        NameList drinks = list(Kind.DRINK, "drink");
        NameList ingredients = list(Kind.INGREDIENT, "ingredient");
        NameList preparations = list(Kind.PREPARATION, "preparation");
        for (Drink drink : book.drinks()) {
            drinks.add(drink.name(), drink.name(), drink.place());
            codes.add(drink.code(), drink.name(), drink.place());
        }
        for (Ingredient ingredient : book.ingredients()) {
            ingredients.add(ingredient.name(), ingredient.name(), ingredient.place());
        }
        for (Preparation preparation : book.preparations()) {
            preparations.add(preparation.name(), preparation.name(), preparation.place());
        }
        preparations.clashWith(ingredients);
        for (NameList names : List.of(drinks, ingredients, preparations, codes)) {
            problems.addAll(names.problems());
        }
        for (Where where : Where.values()) {
            rules.put(where, new RuleList());
        }
        addRules(book.names());
    }

    public static NameBook of(Book book) {
        return new NameBook(book);
    }

    private NameList list(Kind kind, String word) {
        NameList names = new NameList(word);
        lists.put(kind, names);
        return names;
    }

    private void addRules(List<NameRule> written) {
        for (NameRule rule : written) {
            if (!rule.isIgnore() && byName(rule.where(), rule.means()).isEmpty()) {
                problems.add(RuleList.unknown(rule, nearest(rule.where(), rule.means())));
            } else if (rule.where() != Where.ANY
                    && byName(rule.where(), rule.asWritten()).isPresent()) {
                problems.add(RuleList.needless(rule));
            } else {
                ruleList(rule.where()).add(rule).ifPresent(problems::add);
            }
        }
    }

    /** What was found wrong with the names themselves, by place: names that clash and rules that lead nowhere. */
    public List<Problem> problems() {
        return problems.stream().sorted(Problem.ORDER).toList();
    }

    /**
     * What a name in a file of this kind means: a drink in sales, an ingredient in invoices, an ingredient or preparation
     * in counts, any of the three in losses (the ingredient where a drink bears the same name).
     *
     * @param name as written; may be empty where there is a code
     * @param code as written; empty where there is none
     */
    public Optional<Match> find(Where where, String name, String code) {
        Optional<Match> found = byName(where, name);
        if (found.isEmpty()) {
            found = byCode(where, code);
        }
        if (found.isEmpty()) {
            found = byRule(where, name);
        }
        if (found.isEmpty()) {
            found = byRule(where, code);
        }
        return found.isEmpty() ? byCode(where, name) : found;
    }

    /**
     * What a name in the sheet Specs stands for: an ingredient, else a preparation, else a drink, so that a drink may bear
     * the name of the one ingredient it is made of; else by a rule of the sheet Names that holds for any file.
     */
    public Optional<Match> findInSpecs(String name) {
        Optional<Match> found = byName(Where.ANY, name);
        return found.isEmpty() ? byRule(Where.ANY, name).filter(match -> match.kind() != Kind.IGNORED) : found;
    }

    /** The drink or preparation that a row of the sheet Specs belongs to. */
    public Optional<Match> findItem(String name) {
        Optional<Match> drink = byName(Kind.DRINK, name);
        Optional<Match> preparation = byName(Kind.PREPARATION, name);
        if (drink.isPresent() && preparation.isPresent()) {
            return Optional.empty();
        }
        return drink.or(() -> preparation);
    }

    private Optional<Match> byName(Where where, String name) {
        for (Kind kind : kinds(where)) {
            NameList names = names(kind);
            Optional<Match> found = byName(kind, name);
            if (found.isPresent() || names.isAmbiguous(name)) {
                return found;
            }
        }
        return Optional.empty();
    }

    private Optional<Match> byName(Kind kind, String name) {
        return names(kind).find(name).map(found -> new Match(found, kind, Exact.ONE));
    }

    private NameList names(Kind kind) {
        NameList names = lists.get(kind);
        if (names == null) {
            throw new IllegalArgumentException("no list of " + kind);
        }
        return names;
    }

    private Optional<Match> byCode(Where where, String code) {
        return kinds(where).contains(Kind.DRINK)
                ? codes.find(code).map(found -> new Match(found, Kind.DRINK, Exact.ONE))
                : Optional.empty();
    }

    private Optional<Match> byRule(Where where, String name) {
        RuleList own = ruleList(where);
        Optional<NameRule> found = own.find(name);
        if (found.isEmpty() && !own.isAmbiguous(name)) {
            found = ruleList(Where.ANY).find(name);
        }
        return found.flatMap(rule -> meaning(where, rule));
    }

    private Optional<Match> meaning(Where where, NameRule rule) {
        if (rule.isIgnore()) {
            return Optional.of(new Match(rule.asWritten(), Kind.IGNORED, rule.times()));
        }
        return byName(where, rule.means()).map(found -> new Match(found.name(), found.kind(), rule.times()));
    }

    private RuleList ruleList(Where where) {
        return rules.computeIfAbsent(where, absent -> new RuleList());
    }

    private static List<Kind> kinds(Where where) {
        return switch (where) {
            case SALES -> List.of(Kind.DRINK);
            case INVOICES -> List.of(Kind.INGREDIENT);
            case STOCK -> List.of(Kind.INGREDIENT, Kind.PREPARATION);
            case LOSSES, ANY -> IN_SPECS;
        };
    }

    /** The three known names most like an unknown one, nearest first, as the book spells them. */
    public List<String> nearest(Where where, String name) {
        List<String> known = kinds(where).stream()
                .flatMap(kind -> names(kind).names().stream())
                .distinct()
                .toList();
        return Likeness.nearest(name, known, NEAREST);
    }

    @Override
    public Verdict ask(Where where, String name, String code) {
        Optional<Match> found = find(where, name, code);
        if (found.isEmpty()) {
            return new Verdict(Answer.UNKNOWN, nearest(where, name.isBlank() ? code : name));
        }
        return new Verdict(found.get().kind() == Kind.IGNORED ? Answer.IGNORED : Answer.KNOWN, List.of());
    }
}
