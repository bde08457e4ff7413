package heeltap.report;

import java.util.Locale;
import java.util.Set;

/**
 * The size of the report's pages, which all lie on their side, and their margins, in points.
 *
 * @param width of the paper; so too the height
 */
record PageShape(float width, float height) {
    private static final Set<String> LETTER = Set.of("US", "CA");

    static final float SIDE = 50;
    /** Of the first page, which has no running head. */
    static final float FIRST_TOP = 42;

    static final float TOP = 58;
    static final float BOTTOM = 46;
    /** Between two columns. */
    static final float GUTTER = 28;

    /** Letter where the language's country uses it, else A4. */
    static PageShape of(Locale locale) {
        return isLetter(locale) ? new PageShape(792, 612) : new PageShape(842, 595);
    }

    static boolean isLetter(Locale locale) {
        return LETTER.contains(locale.getCountry());
    }

    float contentWidth() {
        return width - 2 * SIDE;
    }

    float contentHeight() {
        return height - TOP - BOTTOM;
    }

    float right() {
        return width - SIDE;
    }
}
