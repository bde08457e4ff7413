package heeltap.report;

import java.util.ArrayList;
import java.util.List;

/**
 * The rows of a table in two settings, of which the page takes the airy one unless the close one ends a page earlier, so
 * that no handful of rows stands alone on a page.
 *
 * @param airy heading and rows
 * @param close the same in less height
 */
record RowSet(List<Slab> airy, List<Slab> close) implements Piece {
    @Override
    public float before() {
        return airy.get(0).before();
    }

    @Override
    public boolean withNext() {
        return airy.get(airy.size() - 1).withNext();
    }

    RowSet keptWithNext() {
        return new RowSet(withLastKept(airy), withLastKept(close));
    }

    private static List<Slab> withLastKept(List<Slab> slabs) {
        List<Slab> kept = new ArrayList<>(slabs);
        kept.set(kept.size() - 1, kept.get(kept.size() - 1).keptWithNext());
        return kept;
    }

    /**
     * The setting for a page with so much room left.
     *
     * @param page height of an empty page
     * @param behind of what must stand with the last row
     */
    List<Slab> setting(float room, float page, float behind) {
        return furtherPages(close, room, page, behind) < furtherPages(airy, room, page, behind) ? close : airy;
    }

    private static int furtherPages(List<Slab> slabs, float room, float page, float behind) {
        float height = behind;
        float heading = 0;
        for (Slab slab : slabs) {
            height += slab.before() + slab.height();
            heading = slab.repeated() == null ? heading : slab.repeated().height();
        }
        return (int) Math.ceil(Math.max(0, height - room) / (page - heading));
    }

    /** Without which the table may not begin on a page. */
    float leastHeight() {
        float height = 0;
        for (Slab slab : airy) {
            height += slab.before() + slab.height();
            if (!slab.withNext()) {
                break;
            }
        }
        return height;
    }
}
