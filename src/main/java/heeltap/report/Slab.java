package heeltap.report;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A piece of a page that is never broken.
 *
 * @param before space above it, dropped at the top of a page
 * @param height in points
 * @param withNext whether the page may not end behind it
 * @param repeated drawn again above it where it begins a page; null for none
 * @param painter draws it
 */
record Slab(
        float before,
        float height,
        boolean withNext,
        @Nullable Slab repeated,
        Painter painter) implements Piece {
    /** Draws with the upper left corner at a point. */
    interface Painter {
        void paint(Canvas canvas, float x, float top);
    }

    static Slab of(float before, float height, Painter painter) {
        return new Slab(before, height, false, null, painter);
    }

    /** Slabs one under the other as one that is never broken. */
    static Slab stacked(float before, List<Slab> slabs) {
        float height = 0;
        for (int i = 0; i < slabs.size(); i++) {
            height += (i == 0 ? 0 : slabs.get(i).before()) + slabs.get(i).height();
        }
        return of(before, height, (canvas, x, top) -> {
            float y = top;
            for (int i = 0; i < slabs.size(); i++) {
                y += i == 0 ? 0 : slabs.get(i).before();
                slabs.get(i).painter().paint(canvas, x, y);
                y += slabs.get(i).height();
            }
        });
    }

    Slab keptWithNext() {
        return new Slab(before, height, true, repeated, painter);
    }

    Slab under(Slab heading) {
        return new Slab(before, height, withNext, heading, painter);
    }

    Slab spaced(float newBefore) {
        return new Slab(newBefore, height, withNext, repeated, painter);
    }
}
