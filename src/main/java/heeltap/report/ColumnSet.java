package heeltap.report;

import heeltap.report.PageFlow.Placed;
import java.util.ArrayList;
import java.util.List;

/**
 * Slabs that run down one column after the other and over as many pages as they need; the columns of the last page end
 * at the same height as near as may be.
 *
 * @param before space above the columns
 * @param slabs of the columns' width
 * @param width of one column, in points
 * @param gap between columns
 * @param count of columns
 */
record ColumnSet(float before, List<Slab> slabs, float width, float gap, int count) implements Piece {
    private static final float STEP = 3;

    @Override
    public boolean withNext() {
        return false;
    }

    /**
     * What stands on one page.
     *
     * @param height of the higher column
     * @param next index of the first slab that is left for the next page
     */
    record Filled(List<Placed> placed, float height, int next) {}

    /** Fills no more than {@code room}; less where all the rest fits in less. */
    Filled fill(int from, float top, float room) {
        float all = 0;
        for (int i = from; i < slabs.size(); i++) {
            all += slabs.get(i).before() + slabs.get(i).height();
        }
        for (float height = all / count; height < room; height += STEP) {
            Filled filled = columns(from, top, height);
            if (filled.next() == slabs.size()) {
                return filled;
            }
        }
        return columns(from, top, room);
    }

    private Filled columns(int from, float top, float height) {
        List<Placed> placed = new ArrayList<>();
        int next = from;
        float highest = 0;
        for (int column = 0; column < count; column++) {
            float y = 0;
            while (next < slabs.size()) {
                int end = chainEnd(next);
                float[] ends = new float[1];
                List<Placed> chain = chain(next, end, column * (width + gap), top, y, ends);
                if (ends[0] > height + 0.01f) {
                    break;
                }
                placed.addAll(chain);
                y = ends[0];
                next = end;
            }
            highest = Math.max(highest, y);
        }
        return new Filled(placed, highest, next);
    }

    private List<Placed> chain(int from, int end, float left, float top, float y, float[] ends) {
        List<Placed> placed = new ArrayList<>();
        float at = y;
        for (int i = from; i < end; i++) {
            Slab slab = slabs.get(i);
            Slab repeated = slab.repeated();
            if (at == 0 && repeated != null) {
                placed.add(new Placed(repeated, left, top));
                at += repeated.height();
            } else if (at > 0) {
                at += slab.before();
            }
            placed.add(new Placed(slab, left, top + at));
            at += slab.height();
        }
        ends[0] = at;
        return placed;
    }

    /** Behind the last slab that must stand with the first. */
    private int chainEnd(int from) {
        int end = from;
        while (end < slabs.size() - 1 && slabs.get(end).withNext()) {
            end++;
        }
        return end + 1;
    }

    /** Without which the set may not begin on a page. */
    float leastHeight() {
        float height = 0;
        for (int i = 0; i < chainEnd(0) && i < slabs.size(); i++) {
            height += slabs.get(i).before() + slabs.get(i).height();
        }
        return before + height;
    }
}
