package heeltap.report;

import java.util.ArrayList;
import java.util.List;

/** Fills pages with slabs, keeping together what belongs together. */
final class PageFlow {
    /** A slab at its place. */
    record Placed(Slab slab, float top) {}

    /** A page with what stands on it. */
    record Page(PageShape shape, List<Placed> placed) {}

    private final List<Page> pages = new ArrayList<>();
    private float y;

    List<Page> pages() {
        return pages;
    }

    /** The rest of a section goes onto pages of this shape, from a new page on if need be. */
    void begin(PageShape shape, boolean newPage) {
        boolean first = pages.isEmpty();
        if (first || newPage || !current().shape().equals(shape)) {
            addPage(shape);
        }
    }

    /** Returns the number, from 1, of the page on which the first slab stands. */
    int add(List<Slab> slabs) {
        int first = 0;
        for (int i = 0; i < slabs.size(); i++) {
            Slab slab = slabs.get(i);
            boolean chained = i > 0 && slabs.get(i - 1).withNext();
            if (!atTop() && (chained ? overflows(slab.before() + slab.height()) : overflows(chainHeight(slabs, i)))) {
                addPage(current().shape());
            }
            place(slab);
            first = i == 0 ? pages.size() : first;
        }
        return first;
    }

    private float chainHeight(List<Slab> slabs, int from) {
        float height = 0;
        for (int i = from; i < slabs.size(); i++) {
            Slab slab = slabs.get(i);
            height += slab.before() + slab.height();
            if (!slab.withNext()) {
                break;
            }
        }
        float page = current().shape().contentHeight();
        return height > page ? slabs.get(from).before() + slabs.get(from).height() : height;
    }

    private boolean overflows(float height) {
        return y + height > PageShape.TOP + current().shape().contentHeight() + 0.01f;
    }

    private boolean atTop() {
        return current().placed().isEmpty();
    }

    private void place(Slab slab) {
        Slab repeated = slab.repeated();
        if (atTop() && repeated != null) {
            current().placed().add(new Placed(repeated, y));
            y += repeated.height();
        } else if (!atTop()) {
            y += slab.before();
        }
        current().placed().add(new Placed(slab, y));
        y += slab.height();
    }

    private void addPage(PageShape shape) {
        pages.add(new Page(shape, new ArrayList<>()));
        y = PageShape.TOP;
    }

    private Page current() {
        return pages.get(pages.size() - 1);
    }
}
