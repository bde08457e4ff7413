package heeltap.quantity;

import heeltap.quantity.Unit.Kind;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** The table behind {@link Units}: each unit with its spellings, folded, plurals in -s left out. */
final class UnitWords {
    static final Unit MASS_OUNCE = unit("oz", Kind.MASS, "28.349523125");

    private static final Set<String> OUNCES = Set.of("oz", "ozs", "ounce", "ounces", "onza", "onzas", "oncia", "once");
    private static final Set<String> FIXED =
            Set.of("ml", "cl", "dl", "l", "hl", "uk fl oz", "uk pint", "uk gallon", "g", "kg", "mg", "oz", "lb");
    private static final Set<String> PLAIN_PIECES =
            Set.of("each", "ea", "piece", "pieces", "pc", "pcs", "pce", "unit", "units", "ct", "count", "whole");

    private static final Set<String> PEELS = Set.of("peel", "zest", "twist");

    private UnitWords() {}

    static boolean isPlainPiece(String key) {
        return PLAIN_PIECES.contains(key);
    }

    static boolean isPeel(String key) {
        return PEELS.contains(key);
    }

    static boolean isOunce(String key) {
        return OUNCES.contains(key);
    }

    /** A slice may become so many ml; a piece is a piece. */
    static boolean isFixed(String key, Unit unit) {
        return switch (unit.kind()) {
            case VOLUME, MASS -> FIXED.contains(unit.name());
            case COUNT -> PLAIN_PIECES.contains(key);
            case SERVE, BATCH, PART -> true;
        };
    }

    static Map<String, Unit> standard() {
        Map<String, Unit> words = new HashMap<>();
        metric(words);
        customary(words);
        withoutStandard(words);
        put(words, unit("serve", Kind.SERVE, "1"), "serve serving portion");
        put(words, unit("batch", Kind.BATCH, "1"), "batch batches");
        put(words, unit("part", Kind.PART, "1"), "part");
        put(words, unit("each", Kind.COUNT, "1"), PIECES);
        return words;
    }

    private static void metric(Map<String, Unit> words) {
        put(words, unit("ml", Kind.VOLUME, "1"), "ml millilitre milliliter millilitro mililitro cc cm3");
        put(words, unit("cl", Kind.VOLUME, "10"), "cl centilitre centiliter centilitro zentiliter");
        put(words, unit("dl", Kind.VOLUME, "100"), "dl decilitre deciliter decilitro deziliter");
        put(words, unit("l", Kind.VOLUME, "1000"), "l lt ltr lit litre liter litro litri");
        put(words, unit("hl", Kind.VOLUME, "100000"), "hl hectolitre hectoliter hektoliter");
        // gr is the gram of invoices and recipes; grains are not met behind a bar
        put(words, unit("g", Kind.MASS, "1"), "g gr gm gram gramme gramm gramo grammo grammi");
        put(words, unit("kg", Kind.MASS, "1000"), "kg kilo kilogram kilogramme kilogramm kilogramo chilo chilogrammo");
        put(words, unit("mg", Kind.MASS, "0.001"), "mg milligram milligramme milligramm");
    }

    private static void customary(Map<String, Unit> words) {
        put(
                words,
                unit("fl oz", Kind.VOLUME, "29.5735295625"),
                "floz fluidounce usfloz usfluidounce usoz usounce flounce");
        put(words, unit("tsp", Kind.VOLUME, "4.92892159375"), "tsp teaspoon ustsp");
        put(words, unit("tbsp", Kind.VOLUME, "14.78676478125"), "tbsp tbs tblsp tablespoon ustbsp");
        put(words, unit("cup", Kind.VOLUME, "236.5882365"), "cup uscup");
        put(words, unit("pint", Kind.VOLUME, "473.176473"), "pint pt uspint uspt");
        put(words, unit("quart", Kind.VOLUME, "946.352946"), "quart qt usquart usqt");
        put(words, unit("gallon", Kind.VOLUME, "3785.411784"), "gallon gal usgallon usgal");
        put(
                words,
                unit("uk fl oz", Kind.VOLUME, "28.4130625"),
                "ukfloz ukoz ukounce ukfluidounce imperialfloz imperialfluidounce impfloz impoz");
        put(words, unit("uk pint", Kind.VOLUME, "568.26125"), "ukpint ukpt imperialpint imppint imppt");
        put(words, unit("uk gallon", Kind.VOLUME, "4546.09"), "ukgallon ukgal imperialgallon impgallon impgal");
        put(words, MASS_OUNCE, "ozavdp ozwt ozweight ozbyweight wtoz weightoz avoirdupoisounce");
        put(words, unit("lb", Kind.MASS, "453.59237"), "lb lbs pound");
    }

    /** Common practice, no source; the sheet Measures overrides them. */
    private static void withoutStandard(Map<String, Unit> words) {
        put(words, unit("dash", Kind.VOLUME, "0.92"), "dash dashes");
        put(words, unit("drop", Kind.VOLUME, "0.05"), "drop tropfen goutte gota goccia gocce");
        put(words, unit("bar spoon", Kind.VOLUME, "5"), "barspoon barspoonful barloffel bsp");
        put(words, unit("splash", Kind.VOLUME, "5"), "splash splashes");
        put(words, unit("shot", Kind.VOLUME, "30"), "shot");
        put(words, unit("jigger", Kind.VOLUME, "44.36"), "jigger");
        put(words, unit("pinch", Kind.MASS, "0.4"), "pinch pinches");
    }

    private static final String PIECES = "each ea piece pc pce unit whole ct count slice wedge wheel peel twist zest "
            + "sprig leaf leaves strip coin ring disc disk cube stick pod clove berry berries cherry cherries olive egg "
            + "stalk stem spear ribbon segment bunch bunches bean seed flower petal chunk wafer crown "
            + "stuck stueck stk stck scheibe scheiben zweig zweige blatt blatter pezzo pezzi fetta fette foglia foglie "
            + "rametto rametti tranche rondelle feuille pieza rodaja hoja ramita";

    private static Unit unit(String name, Kind kind, String factor) {
        return new Unit(name, kind, Exact.of(factor));
    }

    private static void put(Map<String, Unit> words, Unit unit, String spellings) {
        for (String spelling : spellings.split(" ", -1)) {
            words.put(spelling, unit);
        }
    }
}
