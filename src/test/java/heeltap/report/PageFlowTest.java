package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.report.PageFlow.Page;
import heeltap.report.PageFlow.Placed;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class PageFlowTest {
    private static final PageShape SHAPE = PageShape.of(Locale.ENGLISH);
    private static final float BOTTOM = PageShape.TOP + SHAPE.contentHeight();

    @Property(tries = 60)
    void everythingStandsOnAPageInOrderAndNothingIsParted(@ForAll long seed) {
        Random random = new Random(seed);
        List<Slab> all = new ArrayList<>();
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            if (random.nextInt(6) == 0) {
                List<Slab> column = slabs(random, 1 + random.nextInt(30));
                all.addAll(column);
                pieces.add(new ColumnSet(5, column, 300, 20, 2));
            } else {
                List<Slab> slab = slabs(random, 1);
                all.addAll(slab);
                pieces.addAll(slab);
            }
        }
        PageFlow flow = new PageFlow(SHAPE);
        flow.add(pieces);
        List<Placed> placed = new ArrayList<>();
        IdentityHashMap<Slab, Integer> pageOf = new IdentityHashMap<>();
        for (int page = 0; page < flow.pages().size(); page++) {
            for (Placed one : flow.pages().get(page).placed()) {
                assertThat(one.top() + one.slab().height()).isLessThanOrEqualTo(BOTTOM + 0.1f);
                placed.add(one);
                pageOf.put(one.slab(), page);
            }
        }
        assertThat(placed.stream().map(Placed::slab).toList()).isEqualTo(all);
        for (int i = 0; i + 1 < all.size(); i++) {
            if (all.get(i).withNext()) {
                assertThat(pageOf.get(all.get(i))).isEqualTo(pageOf.get(all.get(i + 1)));
            }
        }
    }

    /** Now and then one that may not end a page, but never two, so that no chain is higher than a page. */
    private static List<Slab> slabs(Random random, int count) {
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Slab slab = Slab.of(random.nextInt(12), 8 + random.nextInt(90), (canvas, x, top) -> {});
            boolean chained = i > 0 && slabs.get(i - 1).withNext();
            slabs.add(!chained && i + 1 < count && random.nextInt(3) == 0 ? slab.keptWithNext() : slab);
        }
        return slabs;
    }

    @Test
    void theColumnsOfALastPageEndAtTheSameHeight() {
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            slabs.add(Slab.of(0, 10, (canvas, x, top) -> {}));
        }
        PageFlow flow = new PageFlow(SHAPE);
        flow.add(List.of(new ColumnSet(0, slabs, 300, 20, 2)));
        List<Placed> placed = flow.pages().get(0).placed();
        assertThat(placed).filteredOn(one -> one.left() == 0).hasSize(10);
        assertThat(placed).filteredOn(one -> one.left() == 320).hasSize(10);
    }

    @Test
    void aPartBeginsOnItsOwnPageUnlessTheOneBeforeIsNearlyEmpty() {
        assertThat(pagesAfter(0.2f)).hasSize(1);
        assertThat(pagesAfter(0.6f)).hasSize(2);
    }

    @Test
    void rowsAreSetCloserWhereThatSavesAPageAndOnlyThere() {
        int onePageAndTwo = (int) ((BOTTOM - PageShape.FIRST_TOP) / 15) + 2;
        assertThat(pagesOfRows(onePageAndTwo, 15, 13.5f)).isEqualTo(1);
        assertThat(rowHeightOf(onePageAndTwo, 15, 13.5f)).isEqualTo(13.5f);
        assertThat(rowHeightOf(onePageAndTwo, 15, 14.9f)).isEqualTo(15);
        assertThat(rowHeightOf(onePageAndTwo - 3, 15, 13.5f)).isEqualTo(15);
    }

    @Test
    void whatBelongsToATableStandsWithItsLastRow() {
        PageFlow flow = new PageFlow(SHAPE);
        RowSet rows = rows(40, 15, 14).keptWithNext();
        Slab caution = Slab.of(4, 60, (canvas, x, top) -> {});
        flow.add(List.of(rows, caution));
        List<Placed> last = flow.pages().get(flow.pages().size() - 1).placed();
        assertThat(last.get(last.size() - 1).slab()).isSameAs(caution);
        assertThat(last).hasSizeGreaterThan(1);
    }

    private static int pagesOfRows(int count, float airy, float close) {
        PageFlow flow = new PageFlow(SHAPE);
        flow.add(List.of(rows(count, airy, close)));
        return flow.pages().size();
    }

    private static float rowHeightOf(int count, float airy, float close) {
        PageFlow flow = new PageFlow(SHAPE);
        flow.add(List.of(rows(count, airy, close)));
        return flow.pages().get(0).placed().get(0).slab().height();
    }

    private static RowSet rows(int count, float airy, float close) {
        return new RowSet(rows(count, airy), rows(count, close));
    }

    private static List<Slab> rows(int count, float height) {
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            slabs.add(Slab.of(0, height, (canvas, x, top) -> {}));
        }
        return slabs;
    }

    private static List<Page> pagesAfter(float filled) {
        PageFlow flow = new PageFlow(SHAPE);
        flow.add(List.of(Slab.of(0, SHAPE.contentHeight() * filled, (canvas, x, top) -> {})));
        flow.begin(true);
        flow.add(List.of(Slab.of(0, 10, (canvas, x, top) -> {})));
        return flow.pages();
    }
}
