package heeltap.report;

import java.util.Locale;
import java.util.Set;

/**
 * A page's size and margins, in points.
 *
 * @param width of the paper; so too the height
 */
record PageShape(float width, float height) {
    private static final Set<String> LETTER = Set.of("US", "CA");

    static final float SIDE = 50;
    static final float TOP = 66;
    static final float BOTTOM = 52;

    /** Letter where the language's country uses it, else A4; on its side when wide. */
    static PageShape of(Locale locale, boolean wide) {
        PageShape upright = isLetter(locale) ? new PageShape(612, 792) : new PageShape(595, 842);
        return wide ? upright.turned() : upright;
    }

    private PageShape turned() {
        return new PageShape(/* width= */ height, /* height= */ width);
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
