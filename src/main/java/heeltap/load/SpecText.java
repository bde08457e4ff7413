package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Fractions;
import heeltap.quantity.Measure;
import heeltap.quantity.Unit;
import heeltap.quantity.Units;
import heeltap.record.Folding;
import heeltap.record.SpecAmount;
import heeltap.source.Cell;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads the amount of a spec line as people write it.
 *
 * @param numbers how the column writes decimals
 * @param units the bar's
 * @param isKnown whether the book has an ingredient, preparation or drink of that name
 */
record SpecText(BookNumbers numbers, Units units, Predicate<String> isKnown) {
    /**
     * What a line says.
     *
     * @param amount how much
     * @param unit the unit as written, in its own cell or in another
     * @param ingredient the name, without an amount that stood in its cell
     * @param notice what the reader should know; empty for nothing
     */
    record Line(SpecAmount amount, String unit, String ingredient, String notice) {
        Line unclear(String reason) {
            return new Line(new SpecAmount.Unclear(reason), unit, ingredient, "");
        }
    }

    private static final String PLAIN = "(?:\\d+(?:[.,]\\d+)*|[.,]\\d+)";
    private static final String FRACTION = "(?:\\d+ )?\\d+ ?/ ?\\d+";
    private static final Map<String, String> WORDS = Map.ofEntries(
            Map.entry("half a", "1/2"),
            Map.entry("a half", "1/2"),
            Map.entry("half an", "1/2"),
            Map.entry("half", "1/2"),
            Map.entry("a quarter", "1/4"),
            Map.entry("quarter", "1/4"),
            Map.entry("an", "1"),
            Map.entry("a", "1"),
            Map.entry("one", "1"),
            Map.entry("two", "2"),
            Map.entry("three", "3"),
            Map.entry("four", "4"),
            Map.entry("five", "5"),
            Map.entry("six", "6"));
    private static final String WORD =
            "(?:half an?|a half|half|a quarter|quarter|an|a|one|two|three|four|five|six)(?![\\p{L}])";
    private static final String NUMBER = "(?:" + FRACTION + "|" + PLAIN + "|" + WORD + ")";
    private static final Pattern ABOUT = Pattern.compile(
            "(?:about|approximately|approx\\.?|around|roughly|circa|ca\\.?|c\\.|etwa|environ|env\\.?|~|\u2248)\\s*(.+)");
    private static final Pattern AMOUNT = Pattern.compile(
            "(" + NUMBER + ")(?:( ?- ?| to | or | bis | oder | ou | o | \u00e0 )(" + NUMBER + "))?(.*)");
    private static final Pattern JUICE =
            Pattern.compile("(?:the )?(?:juice|jus|saft|zumo|jugo|succo)(?: of| de| d'| von| di)? ?(" + NUMBER
                    + ")(?: of)?(?: an?)?(.*)");
    private static final Pattern TOP = Pattern.compile(
            "(?:to )?(?:top|fill)(?: up| off| to top)?(?: with (?<with>.+))?|top(?:ped|per)|(?:zum )?auff(?:\u00fc|ue)llen"
                    + "|compl(?:\u00e9|e)ter|allonger|colmare|rellenar");
    private static final Pattern RINSE = Pattern.compile("(?:a |1 )?(?:glass )?rinse(?:d| glass| the glass)?");
    private static final Set<String> NO_AMOUNT = Set.of(
            "to taste",
            "as needed",
            "as required",
            "q.s.",
            "qs",
            "q.b.",
            "qb",
            "some",
            "few",
            "a few",
            "several",
            "optional",
            "garnish",
            "nach geschmack",
            "au go\u00fbt",
            "al gusto",
            "plenty",
            "lots");

    Line read(Optional<Cell> cell, String unit, String ingredient) {
        Line line = new Line(new SpecAmount.Unclear("There is no amount."), unit, ingredient, "");
        if (cell.isEmpty()) {
            return withoutAmount(line);
        }
        if (cell.get().moment() != null) {
            return line.unclear("The spreadsheet holds a date here, as happens when 1/2 is typed.");
        }
        if (cell.get().number() != null) {
            return stored(cell.get(), line);
        }
        return written(normal(cell.get().text()), line);
    }

    /** A number of the spreadsheet, perhaps shown with a unit by its format. */
    private Line stored(Cell cell, Line line) {
        Exact number = Exact.of(Objects.requireNonNull(cell.number()));
        if (cell.text().contains("%")) {
            return line.unclear("A percentage is no amount.");
        }
        if (number.isNegative()) {
            return line.unclear("An amount cannot be negative.");
        }
        Matcher matcher = Pattern.compile("[\\d.,/ ]+([\\p{L} ]+)").matcher(normal(cell.text()));
        return withUnit(line, new SpecAmount.Units(number), matcher.matches() ? matcher.group(1) : "");
    }

    private Line written(String text, Line line) {
        Matcher about = ABOUT.matcher(text);
        if (about.matches()) {
            Line exact = written(about.group(1), line);
            return exact.amount() instanceof SpecAmount.Units
                    ? new Line(
                            exact.amount(),
                            exact.unit(),
                            exact.ingredient(),
                            "It says about; the number is costed as it stands.")
                    : exact;
        }
        if (NO_AMOUNT.contains(text) || text.endsWith(" to taste")) {
            return line.unclear("\"" + text + "\" has no amount that could be costed.");
        }
        SpecAmount word = word(text);
        if (word != null) {
            return new Line(word, line.unit(), line.ingredient(), "");
        }
        Matcher juice = JUICE.matcher(text);
        if (juice.matches()) {
            return juice(line, number(juice.group(1)), juice.group(2).strip());
        }
        Matcher amount = AMOUNT.matcher(text);
        if (!amount.matches()) {
            return line.unclear(
                    text.startsWith("-") ? "An amount cannot be negative." : "\"" + text + "\" is no amount.");
        }
        return amount(amount, line);
    }

    private static @Nullable SpecAmount word(String text) {
        if (TOP.matcher(text).matches()) {
            return new SpecAmount.ToTop();
        }
        if (text.equals("to target") || text.equals("target")) {
            return new SpecAmount.ToTarget();
        }
        return RINSE.matcher(text).matches() ? new SpecAmount.Rinse() : null;
    }

    private Line amount(Matcher matcher, Line line) {
        Exact first = number(matcher.group(1));
        if (first == null) {
            return line.unclear("\"" + matcher.group(1) + "\" is no number.");
        }
        String rest = matcher.group(4).strip();
        if (matcher.group(3) == null) {
            return withUnit(line, new SpecAmount.Units(first), rest);
        }
        Exact second = number(matcher.group(3));
        if (second == null) {
            return line.unclear("\"" + matcher.group(3) + "\" is no number.");
        }
        boolean mixed = matcher.group(2).equals("-")
                && first.isWhole()
                && second.isLessThan(Exact.ONE)
                && matcher.group(3).contains("/");
        if (mixed) {
            Line one = withUnit(line, new SpecAmount.Units(first.plus(second)), rest);
            return noted(one, "It is read as " + first.plus(second) + ", not as a range.");
        }
        if (!first.isLessThan(second)) {
            return line.unclear("The range does not rise from " + first + " to " + second + ".");
        }
        return noted(
                withUnit(line, new SpecAmount.Units(second), rest),
                "Of the range from " + first + " to " + second + " the upper end is costed.");
    }

    private static Line noted(Line line, String notice) {
        return line.amount() instanceof SpecAmount.Units
                ? new Line(line.amount(), line.unit(), line.ingredient(), notice)
                : line;
    }

    /** What stands behind the number: nothing, a unit, the ingredient's name, or both. */
    private Line withUnit(Line line, SpecAmount amount, String rest) {
        String behind = rest.replaceFirst("^of( |$)", "").strip();
        if (behind.isEmpty() || isSame(behind, line.ingredient())) {
            return new Line(amount, line.unit(), line.ingredient(), "");
        }
        Optional<String> unit = leadingUnit(behind);
        if (unit.isEmpty()) {
            return line.unclear("\"" + behind + "\" is no unit.");
        }
        String name = behind.substring(unit.get().length()).strip().replaceFirst("^of( |$)", "");
        if (RINSE.matcher(name).matches()) {
            name = "";
        }
        if (!name.isEmpty() && !isSame(name, line.ingredient())) {
            return line.unclear("\"" + name + "\" does not belong to an amount.");
        }
        if (!line.unit().isEmpty() && !find(unit.get()).equals(find(line.unit()))) {
            return line.unclear("The amount says " + unit.get() + " and the column Unit says " + line.unit() + ".");
        }
        return new Line(amount, line.unit().isEmpty() ? unit.get() : line.unit(), line.ingredient(), "");
    }

    private Line juice(Line line, @Nullable Exact pieces, String fruit) {
        if (pieces == null || !pieces.isPositive()) {
            return line.unclear("It does not say of how many pieces.");
        }
        if (!fruit.isEmpty() && !isSame(fruit, line.ingredient())) {
            return line.unclear("It names \"" + fruit + "\", but the ingredient is \"" + line.ingredient() + "\".");
        }
        boolean counted = line.unit().isEmpty()
                || find(line.unit())
                        .filter(unit -> unit.kind() == Unit.Kind.COUNT)
                        .isPresent();
        return counted
                ? new Line(new SpecAmount.JuiceOf(pieces), line.unit(), line.ingredient(), "")
                : line.unclear("Juice of so many pieces has no unit " + line.unit() + ".");
    }

    /** No amount in its own cell: it may stand in the cell of the unit, or before the ingredient's name. */
    private Line withoutAmount(Line line) {
        SpecAmount word = word(normal(line.unit()));
        if (word != null) {
            return new Line(word, "", line.ingredient(), "");
        }
        String whole = normal(line.ingredient());
        if (!line.unit().isEmpty() || isKnown.test(line.ingredient())) {
            return line;
        }
        Matcher top = TOP.matcher(whole);
        if (top.matches() && top.group("with") != null) {
            return new Line(new SpecAmount.ToTop(), "", tail(line.ingredient(), top.group("with")), "");
        }
        Matcher juice = JUICE.matcher(whole);
        if (juice.matches() && !juice.group(2).isBlank()) {
            String fruit = tail(line.ingredient(), juice.group(2).strip());
            return juice(new Line(line.amount(), "", fruit, ""), number(juice.group(1)), "");
        }
        return splitIngredient(line, whole);
    }

    /** {@code 2 oz lime juice}. */
    private Line splitIngredient(Line line, String whole) {
        Matcher about = ABOUT.matcher(whole);
        Matcher matcher = AMOUNT.matcher(about.matches() ? about.group(1) : whole);
        if (!matcher.matches()) {
            return line;
        }
        String behind = matcher.group(4).strip();
        String unit = leadingUnit(behind).orElse("");
        String name = behind.substring(unit.length()).strip().replaceFirst("^of( |$)", "");
        if (name.isEmpty()) {
            // 1 olive: the piece is the ingredient
            name = unit;
            unit = "";
        }
        if (name.isEmpty() || (unit.isEmpty() && !isKnown.test(name) && !isKnown.test(singular(name)))) {
            return line;
        }
        String written = tail(line.ingredient(), name);
        String known = !isKnown.test(written) && isKnown.test(singular(written)) ? singular(written) : written;
        String amount = whole.substring(0, whole.length() - behind.length()).strip();
        return written((amount + " " + unit).strip(), new Line(line.amount(), "", known, ""));
    }

    /** The end of the text as written whose normal form is given. */
    private static String tail(String written, String normal) {
        String clean = BookText.clean(written);
        return clean.length() >= normal.length() ? clean.substring(clean.length() - normal.length()) : normal;
    }

    private Optional<String> leadingUnit(String text) {
        int end = text.length();
        while (end > 0) {
            String head = text.substring(0, end).strip();
            if (find(head).isPresent()) {
                return Optional.of(head);
            }
            end = text.lastIndexOf(' ', end - 1);
        }
        return Optional.empty();
    }

    private Optional<Unit> find(String unit) {
        return units.find(unit, Measure.ML);
    }

    private static boolean isSame(String one, String other) {
        return Folding.fold(singular(one)).equals(Folding.fold(singular(other)));
    }

    private static String singular(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith("ies") && name.length() > 4) {
            return name.substring(0, name.length() - 3) + "y";
        }
        return lower.endsWith("s") && !lower.endsWith("ss") ? name.substring(0, name.length() - 1) : name;
    }

    private @Nullable Exact number(String text) {
        String plain = WORDS.getOrDefault(text, text);
        return Fractions.parse(plain).orElseGet(() -> numbers.parse(plain));
    }

    private static String normal(String text) {
        return BookText.clean(Fractions.spellOut(
                        text.replace('\u2013', '-').replace('\u2014', '-').replace('\u2212', '-')))
                .toLowerCase(Locale.ROOT);
    }
}
