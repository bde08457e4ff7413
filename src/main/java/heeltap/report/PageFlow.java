package heeltap.report;

import heeltap.report.ColumnSet.Filled;
import java.util.ArrayList;
import java.util.List;

/** Fills pages with slabs, keeping together what belongs together. */
final class PageFlow {
    /** A part of the report begins on a new page where more than this share of the page before is filled. */
    private static final float NEARLY_EMPTY = 0.4f;
    /** A section begins on a new page where less than this share of the page is left. */
    private static final float TOO_LITTLE = 0.25f;

    /** A slab at its place; {@code left} counts from the left margin. */
    record Placed(Slab slab, float left, float top) {}

    /** A page with what stands on it. */
    record Page(List<Placed> placed) {}

    private final PageShape shape;
    private final List<Page> pages = new ArrayList<>();
    private float y;

    PageFlow(PageShape shape) {
        this.shape = shape;
        addPage();
    }

    List<Page> pages() {
        return pages;
    }

    /** A section begins, one that opens a part or one that does not. */
    void begin(boolean part) {
        float filled = (y - PageShape.TOP) / shape.contentHeight();
        if (!atTop() && filled > (part ? NEARLY_EMPTY : 1 - TOO_LITTLE)) {
            addPage();
        }
    }

    /** Returns the number, from 1, of the page on which the first piece stands. */
    int add(List<? extends Piece> added) {
        List<Piece> pieces = new ArrayList<>(added);
        int first = 0;
        for (int i = 0; i < pieces.size(); i++) {
            boolean chained = i > 0 && pieces.get(i - 1).withNext();
            float needed = chained ? height(pieces.get(i)) : chainHeight(pieces, i);
            if (!atTop() && overflows(needed)) {
                addPage();
            }
            first = i == 0 ? pages.size() : first;
            if (pieces.get(i) instanceof RowSet rows) {
                float behind = rows.withNext() && i + 1 < pieces.size() ? chainHeight(pieces, i + 1) : 0;
                pieces.remove(i);
                pieces.addAll(i, rows.setting(bottom() - y, shape.contentHeight(), behind));
            }
            place(pieces.get(i));
        }
        return first;
    }

    private static float height(Piece piece) {
        if (piece instanceof ColumnSet columns) {
            return columns.leastHeight();
        }
        return piece instanceof RowSet rows ? rows.leastHeight() : piece.before() + ((Slab) piece).height();
    }

    private float chainHeight(List<? extends Piece> pieces, int from) {
        float height = 0;
        for (int i = from; i < pieces.size(); i++) {
            height += height(pieces.get(i));
            if (!pieces.get(i).withNext()) {
                break;
            }
        }
        return height > shape.contentHeight() ? height(pieces.get(from)) : height;
    }

    private boolean overflows(float height) {
        return y + height > bottom() + 0.01f;
    }

    private float bottom() {
        return PageShape.TOP + shape.contentHeight();
    }

    private boolean atTop() {
        return current().placed().isEmpty();
    }

    private void place(Piece piece) {
        if (piece instanceof ColumnSet columns) {
            place(columns);
        } else {
            place((Slab) piece);
        }
    }

    private void place(Slab slab) {
        Slab repeated = slab.repeated();
        if (atTop() && repeated != null) {
            current().placed().add(new Placed(repeated, 0, y));
            y += repeated.height();
        } else if (!atTop()) {
            y += slab.before();
        }
        current().placed().add(new Placed(slab, 0, y));
        y += slab.height();
    }

    private void place(ColumnSet columns) {
        int next = 0;
        while (next < columns.slabs().size()) {
            y += atTop() ? 0 : columns.before();
            Filled filled = columns.fill(next, y, bottom() - y);
            if (filled.next() == next && !atTop()) {
                addPage();
                continue;
            }
            if (filled.next() == next) {
                // higher than a page: it stands alone and runs over the margin rather than being lost
                filled = new Filled(
                        List.of(new Placed(columns.slabs().get(next), 0, y)),
                        columns.slabs().get(next).height(),
                        next + 1);
            }
            current().placed().addAll(filled.placed());
            y += filled.height();
            next = filled.next();
            if (next < columns.slabs().size()) {
                addPage();
            }
        }
    }

    private void addPage() {
        y = pages.isEmpty() ? PageShape.FIRST_TOP : PageShape.TOP;
        pages.add(new Page(new ArrayList<>()));
    }

    private Page current() {
        return pages.get(pages.size() - 1);
    }
}
