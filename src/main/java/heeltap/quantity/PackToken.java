package heeltap.quantity;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A word, number or sign of a pack text.
 *
 * @param kind what it is
 * @param text in lower case
 * @param unit only of a unit
 */
record PackToken(Kind kind, String text, @Nullable Unit unit) {
    enum Kind {
        NUMBER,
        /** {@code x}, {@code -}, {@code of}: one of many. */
        TIMES,
        SLASH,
        PLUS,
        /** Volume or mass. */
        UNIT,
        /** {@code ct}, {@code each}: the number before it counts pieces. */
        COUNT,
        /** {@code pack}: a count after a number, a container else. */
        PACK,
        DOZEN,
        /** Case, keg, bottle: holds something. */
        CONTAINER,
        /** The US No. 10 can: {@code #10}. */
        NUMBERED_CAN,
        UNKNOWN
    }

    private static final Pattern TOKEN =
            Pattern.compile("#\\s?10(?!\\d)|\\d+(?:[.,]\\d+)*|[.,]\\d+|\\p{L}[\\p{L}\\p{M}]*\\.?|\\S");
    private static final Pattern STRENGTH =
            Pattern.compile("\\d+(?:[.,]\\d+)?\\s*%(?:\\s*(?:vol|abv|alc)\\b\\.?)?", Pattern.CASE_INSENSITIVE);
    private static final Set<String> SIZES = Set.of(
            "ml",
            "cl",
            "dl",
            "l",
            "hl",
            "fl oz",
            "uk fl oz",
            "pint",
            "quart",
            "gallon",
            "uk pint",
            "uk gallon",
            "g",
            "kg",
            "mg",
            "oz",
            "lb");
    private static final Set<String> CONTAINERS =
            Set.of(words("case cases cs box boxes bx carton cartons ctn crate crates "
                    + "tray trays bag bags sack sacks bottle bottles btl btls bt bot can cans cn keg kegs barrels jar jars tin tins "
                    + "jug jugs pouch pouches bib drum tub tubs pail bucket sleeve cask tank growler magnum flask nrb pet rb "
                    + "flasche flaschen fl kiste kisten karton kartons dose dosen fass fasser beutel glas glass "
                    + "bouteille bouteilles caisse caisses fut futs sac sacs boite boites canette canettes bidon "
                    + "botella botellas caja cajas barril lata latas bolsa saco sacos bottiglia bottiglie cassa casse "
                    + "cartone fusto lattina lattine sacco"));
    private static final Set<String> COUNTS = Set.of(
            words("ct count cnt each ea pc pcs pce piece pieces stk stuck stck unit units un pieza piezas pezzi"));
    private static final Set<String> PACKS = Set.of("pk", "pks", "pack", "packs", "pkt", "er");
    private static final Set<String> OF = Set.of("x", "of", "de", "di", "a", "zu", "per");
    private static final Set<String> DOZENS = Set.of("dz", "doz", "dozen", "dzn", "dutzend", "douzaine");
    /** 27 CFR 25.151: a beer barrel is 31 US gallons. */
    private static final Unit BARREL = new Unit("bbl", Unit.Kind.VOLUME, Exact.of("117347.765304"));

    private static String[] words(String spaced) {
        return spaced.split(" ", -1);
    }

    static List<PackToken> of(String text, Measure measure) {
        String plain = STRENGTH.matcher(Fractions.spellOut(text))
                .replaceAll(" ")
                .replace('\u00d7', 'x')
                .replace('*', 'x')
                .replace('\u2013', '-')
                .replace('\u2014', '-')
                .replaceAll("(?<=\\S)\\s*\\(", " x ")
                .replaceAll("[()]", " ");
        List<String> words = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(plain.toLowerCase(Locale.ROOT));
        while (matcher.find()) {
            words.add(matcher.group());
        }
        List<PackToken> tokens = new ArrayList<>();
        for (int i = 0; i < words.size(); ) {
            i += addNext(tokens, words, i, measure);
        }
        return tokens;
    }

    /** Adds the token that begins there and says how many words it took; a unit may be several words. */
    private static int addNext(List<PackToken> tokens, List<String> words, int from, Measure measure) {
        for (int length = Math.min(3, words.size() - from); length > 0; length--) {
            List<String> some = words.subList(from, from + length);
            Optional<Unit> unit = some.stream().allMatch(PackToken::isWord)
                    ? findUnit(String.join(" ", some), measure)
                    : Optional.empty();
            if (unit.isPresent()) {
                tokens.add(new PackToken(Kind.UNIT, String.join(" ", some), unit.get()));
                return length;
            }
        }
        tokens.add(new PackToken(kind(words.get(from)), words.get(from), null));
        return 1;
    }

    private static boolean isWord(String text) {
        return Character.isLetter(text.charAt(0));
    }

    private static Optional<Unit> findUnit(String text, Measure measure) {
        if (Set.of("bbl", "bbls", "barrel", "barrels").contains(Units.fold(text))) {
            return Optional.of(BARREL);
        }
        return Units.standard().find(text, measure).filter(unit -> SIZES.contains(unit.name()));
    }

    private static Kind kind(String text) {
        if (text.startsWith("#")) {
            return text.length() > 1 ? Kind.NUMBERED_CAN : Kind.UNKNOWN;
        }
        if (Character.isDigit(text.charAt(text.length() - 1))) {
            return Kind.NUMBER;
        }
        String word = fold(text);
        if (word.isEmpty()) {
            return sign(text.charAt(0));
        }
        if (OF.contains(word)) {
            return Kind.TIMES;
        }
        if (COUNTS.contains(word)) {
            return Kind.COUNT;
        }
        if (PACKS.contains(word)) {
            return Kind.PACK;
        }
        if (DOZENS.contains(word)) {
            return Kind.DOZEN;
        }
        return CONTAINERS.contains(word) ? Kind.CONTAINER : Kind.UNKNOWN;
    }

    private static Kind sign(char sign) {
        return switch (sign) {
            case '-' -> Kind.TIMES;
            case '/' -> Kind.SLASH;
            case '+' -> Kind.PLUS;
            default -> Kind.UNKNOWN;
        };
    }

    static String fold(String word) {
        return Units.fold(Normalizer.normalize(word, Normalizer.Form.NFKD));
    }
}
