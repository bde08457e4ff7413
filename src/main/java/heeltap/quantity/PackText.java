package heeltap.quantity;

import heeltap.quantity.PackToken.Kind;
import java.io.Serial;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;

/** One pack text being read: finds the one size in it ("70 cl"), and multiplies the counts around it. */
final class PackText {
    private static final Pattern THOUSANDS = Pattern.compile("[1-9]\\d{0,2}(?:[.,]\\d{3})+");
    private static final Pattern ONE_SEPARATOR = Pattern.compile("\\d*[.,]?\\d+");
    private static final Exact TWELVE = Exact.of(12);
    /** No case weighs more, so a count beside a mass that would is the count within that mass. */
    private static final Exact HEAVIEST_CASE_GRAMS = Exact.of(50_000);

    private static final Set<String> CASES = Set.of(
            "case", "cs", "box", "bx", "carton", "ctn", "crate", "tray", "kiste", "karton", "caisse", "caja", "cassa");
    private static final Set<String> OF = Set.of("of", "de", "di", "zu");
    /** Suppliers who print {@code packs/size} use these; {@code 1/2 lb} may then be one pack of two pounds. */
    private static final Set<String> PACK_SLASH_SIZE = Set.of("lb", "oz", "fl oz");

    private final String text;
    private final Measure measure;
    private final List<PackToken> tokens;

    /** Why a text is no pack. */
    static final class NotUnderstood extends Exception {
        @Serial
        private static final long serialVersionUID = 1L;

        final String reason;

        NotUnderstood(String reason) {
            this.reason = reason;
        }
    }

    PackText(String text, Measure measure) {
        this.text = text;
        this.measure = measure;
        this.tokens = PackToken.of(text.strip(), measure);
    }

    Pack pack() throws NotUnderstood {
        for (PackToken token : tokens) {
            if (token.kind() == Kind.UNKNOWN) {
                throw new NotUnderstood("\"" + token.text() + "\" is no unit or word of a pack."
                        + (token.text().equals("z") ? " It may be a misprint of oz." : ""));
            }
        }
        if (tokens.get(0).text().equals("-")) {
            throw new NotUnderstood("A pack cannot hold less than nothing.");
        }
        List<PackToken> sizes =
                tokens.stream().filter(t -> t.kind() == Kind.UNIT).toList();
        if (sizes.isEmpty()) {
            return counted();
        }
        if (sizes.size() > 1) {
            throw new NotUnderstood("It gives two sizes.");
        }
        return sized(tokens.indexOf(sizes.get(0)));
    }

    /** {@code case of 40}, {@code 24 ct}, {@code 6/#10}: pieces without a size; a bare number for what is counted. */
    private Pack counted() throws NotUnderstood {
        boolean numbered = tokens.stream().anyMatch(t -> t.kind() == Kind.NUMBERED_CAN);
        boolean hasNumber = tokens.stream().anyMatch(t -> t.kind() == Kind.NUMBER);
        boolean bare = measure == Measure.EACH && tokens.size() == 1 && hasNumber;
        if (!numbered && !bare && !countsPieces(hasNumber)) {
            throw new NotUnderstood(
                    hasNumber && tokens.stream().allMatch(t -> isNumberOrSign(t.kind()))
                            ? "It has no unit."
                            : "It does not say how much it holds.");
        }
        return new Pack(product(tokens), Amount.of("1", Measure.EACH), form(), text);
    }

    private static boolean isNumberOrSign(Kind kind) {
        return kind == Kind.NUMBER || kind == Kind.TIMES || kind == Kind.SLASH || kind == Kind.PLUS;
    }

    /** Whether some number in it counts pieces, not containers: {@code 12 pack} does, {@code 2 bags} does not. */
    private boolean countsPieces(boolean hasNumber) {
        for (int i = 0; i < tokens.size(); i++) {
            Kind kind = tokens.get(i).kind();
            Kind before = i == 0 ? Kind.UNKNOWN : tokens.get(i - 1).kind();
            if (kind == Kind.DOZEN || kind == Kind.COUNT) {
                return true;
            }
            if (kind == Kind.PACK
                    && (before == Kind.NUMBER
                            || (i >= 2 && tokens.get(i - 1).text().equals("-")))) {
                return true;
            }
            // 24/case, 24 per case
            if (kind == Kind.CONTAINER
                    && i >= 2
                    && (before == Kind.SLASH || tokens.get(i - 1).text().equals("per"))) {
                return hasNumber;
            }
        }
        boolean ofSome = tokens.size() > 1 && OF.contains(tokens.get(1).text());
        return (kindAt(0) == Kind.PACK || CASES.contains(tokens.get(0).text().replace(".", "")) || ofSome)
                && kindAt(tokens.size() - 1) == Kind.NUMBER;
    }

    /** The size that ends at a unit, and the counts before and after it. */
    private Pack sized(int unitAt) throws NotUnderstood {
        Unit unit = Objects.requireNonNull(tokens.get(unitAt).unit());
        if (unitAt == 0 || tokens.get(unitAt - 1).kind() != Kind.NUMBER) {
            throw new NotUnderstood(
                    "There is no number before \"" + tokens.get(unitAt).text() + "\".");
        }
        int sizeFrom = sizeFrom(unitAt, unit);
        if (sizeFrom > 0 && kindAt(sizeFrom - 1) == Kind.NUMBER) {
            throw new NotUnderstood("Two numbers stand side by side with no sign between them.");
        }
        Exact size = sizeFrom == unitAt - 1 ? number(tokens.get(sizeFrom).text(), unit) : fraction(sizeFrom, unitAt);
        Exact base = size.times(unit.factor());
        if (!base.isPositive() || (unit.kind() == Unit.Kind.VOLUME && base.isLessThan(Exact.ONE))) {
            throw new NotUnderstood("A pack of " + size + " " + unit.name() + " cannot be.");
        }
        if (unitAt + 1 < tokens.size()
                && kindAt(unitAt + 1) == Kind.NUMBER
                && (unitAt + 2 == tokens.size() || isNumberOrSign(kindAt(unitAt + 2)))) {
            throw new NotUnderstood("The number after \"" + tokens.get(unitAt).text() + "\" says not what it counts.");
        }
        Exact units = product(tokens.subList(0, sizeFrom)).times(product(tokens.subList(unitAt + 1, tokens.size())));
        return withCount(units, new Amount(base, unit.kind() == Unit.Kind.MASS ? Measure.G : Measure.ML), unitAt);
    }

    /** {@code 115 ct 38 lb} is 38 lb in 115 pieces, where 38 lb each would be no case. */
    private Pack withCount(Exact units, Amount size, int unitAt) throws NotUnderstood {
        boolean beside = size.measure() == Measure.G
                && tokens.stream()
                        .anyMatch(t -> t.kind() == Kind.COUNT && t.text().matches("ct|count|cnt|pcs?|pieces?"))
                && tokens.stream().noneMatch(t -> t.kind() == Kind.TIMES || t.kind() == Kind.SLASH)
                && Set.of("lb", "kg")
                        .contains(Objects.requireNonNull(tokens.get(unitAt).unit())
                                .name());
        if (!beside || units.equals(Exact.ONE)) {
            return new Pack(units, size, form(), text);
        }
        if (!size.times(units).value().isGreaterThan(HEAVIEST_CASE_GRAMS)) {
            throw new NotUnderstood(
                    "It could be " + units + " packs of that weight, or " + units + " pieces of that weight together.");
        }
        Amount one = measure == Measure.EACH
                ? Amount.of("1", Measure.EACH)
                : new Amount(size.value().dividedBy(units), Measure.G);
        return new Pack(units, one, form(), text);
    }

    /** Where the size begins: at its number, at the fraction {@code 1/2}, or at the mixed number {@code 2 1/2}. */
    private int sizeFrom(int unitAt, Unit unit) throws NotUnderstood {
        if (unitAt < 3 || kindAt(unitAt - 2) != Kind.SLASH || kindAt(unitAt - 3) != Kind.NUMBER) {
            return unitAt - 1;
        }
        String parts =
                tokens.get(unitAt - 3).text() + "/" + tokens.get(unitAt - 1).text();
        boolean barrel = unit.name().equals("bbl");
        boolean nested = unitAt > 3 && kindAt(unitAt - 4) == Kind.SLASH;
        boolean vulgar = Set.of("1/2", "1/3", "2/3", "1/4", "3/4").contains(parts)
                || (barrel && Set.of("1/6", "1/8").contains(parts));
        boolean doubtful = Set.of("1/5", "1/6", "1/8").contains(parts) && !barrel;
        if (doubtful || (vulgar && (nested || (PACK_SLASH_SIZE.contains(unit.name()) && unitAt == 3)))) {
            throw new NotUnderstood(
                    "\"" + parts + " " + unit.name() + "\" could be a fraction, or a number of packs of a size.");
        }
        if (!vulgar) {
            return unitAt - 1;
        }
        return unitAt > 3 && kindAt(unitAt - 4) == Kind.NUMBER ? unitAt - 4 : unitAt - 3;
    }

    private Exact fraction(int from, int to) throws NotUnderstood {
        StringBuilder written = new StringBuilder();
        for (PackToken token : tokens.subList(from, to)) {
            boolean first = written.isEmpty();
            boolean joined = token.kind() == Kind.SLASH || written.toString().endsWith("/");
            written.append(first || joined ? "" : " ").append(token.text());
        }
        return Fractions.parse(written.toString())
                .orElseThrow(() -> new NotUnderstood("\"" + written + "\" is no number."));
    }

    /** Counts multiplied; between two of them must stand a sign or a word. */
    private static Exact product(List<PackToken> some) throws NotUnderstood {
        Exact product = Exact.ONE;
        for (int i = 0; i < some.size(); i++) {
            Kind kind = some.get(i).kind();
            if (kind == Kind.DOZEN) {
                product = product.times(TWELVE);
            } else if (kind == Kind.NUMBER) {
                Exact sum = count(some.get(i).text());
                // 12+1: one is free
                while (i + 2 < some.size()
                        && some.get(i + 1).kind() == Kind.PLUS
                        && some.get(i + 2).kind() == Kind.NUMBER) {
                    sum = sum.plus(count(some.get(i + 2).text()));
                    i += 2;
                }
                if (i + 1 < some.size() && some.get(i + 1).kind() == Kind.NUMBER) {
                    throw new NotUnderstood("Two numbers stand side by side with no sign between them.");
                }
                product = product.times(sum);
            } else if (kind == Kind.PLUS) {
                throw new NotUnderstood("The sign + has no number on both sides.");
            }
        }
        return product;
    }

    private static Exact count(String written) throws NotUnderstood {
        String digits =
                THOUSANDS.matcher(written).matches() ? written.replaceAll("[.,]", "") : written.replace(',', '.');
        if (!digits.matches("\\d{1,6}(?:\\.0+)?") || Exact.of(digits).isZero()) {
            throw new NotUnderstood("\"" + written + "\" is no count.");
        }
        return Exact.of(digits);
    }

    /**
     * A size with point or comma. Three digits after it are thousands of ml and g, and decimals of litres, kilograms
     * and customary units: nobody packs one ml, or 1000 l by the bottle.
     */
    private static Exact number(String written, Unit unit) throws NotUnderstood {
        if (THOUSANDS.matcher(written).matches()) {
            if (Set.of("ml", "g", "mg").contains(unit.name())) {
                return Exact.of(written.replaceAll("[.,]", ""));
            }
            if (unit.name().equals("cl") || unit.name().equals("dl")) {
                throw new NotUnderstood("\"" + written + "\" could be read with thousands or with decimals.");
            }
        }
        if (!ONE_SEPARATOR.matcher(written).matches()) {
            throw new NotUnderstood("\"" + written + "\" is no number.");
        }
        return Exact.of(written.replace(',', '.'));
    }

    private Kind kindAt(int index) {
        return tokens.get(index).kind();
    }

    private String form() {
        return tokens.stream()
                .filter(t -> t.kind() == Kind.CONTAINER || t.kind() == Kind.PACK || t.kind() == Kind.NUMBERED_CAN)
                .map(t -> t.text().replace(".", "").toLowerCase(Locale.ROOT))
                .findFirst()
                .orElse("");
    }
}
