package heeltap.sheet;

import java.util.BitSet;
import java.util.SortedSet;
import java.util.TreeSet;

/** A reading of a worksheet that only looks for what is odd, and for merged cells, which stand at its end. */
final class XlsxCheck extends XlsxCellEvents {
    private final OddPlaces odd;
    private final MergedCells merged = new MergedCells();
    private final BitSet hiddenColumns = new BitSet();
    private final SortedSet<Integer> hiddenFilled = new TreeSet<>();
    private int hiddenRows;
    private int firstHidden;
    private int rowWithHidden;

    XlsxCheck(OddPlaces odd) {
        this.odd = odd;
    }

    OddPlaces odd() {
        if (hiddenRows > 0) {
            odd.addHiddenRows(firstHidden, hiddenRows);
            hiddenRows = 0;
        }
        odd.addHiddenColumns(hiddenFilled);
        hiddenFilled.clear();
        return odd;
    }

    MergedCells merged() {
        return merged;
    }

    @Override
    void rowStarts(int number, boolean hidden) {
        rowWithHidden = hidden ? number : 0;
    }

    @Override
    void cell(RawCell cell) {
        if (rowWithHidden > 0) {
            firstHidden = hiddenRows++ == 0 ? rowWithHidden : firstHidden;
            rowWithHidden = 0;
        }
        if (hiddenColumns.get(cell.column())) {
            hiddenFilled.add(cell.column());
        }
        if (cell.isUncalculated()) {
            odd.addUncalculated(cell.row(), cell.column(), XlsxSheet.formulaText(cell.formula()));
        }
    }

    @Override
    void hiddenColumns(int first, int last) {
        hiddenColumns.set(first, last + 1);
    }

    @Override
    void merged(String range) {
        int colon = range.indexOf(':');
        if (colon > 0) {
            String first = range.substring(0, colon);
            String last = range.substring(colon + 1);
            merged.add(rowOf(first), columnOf(first), rowOf(last), columnOf(last));
        }
    }

    private static int rowOf(String reference) {
        int row = 0;
        for (int i = 0; i < reference.length(); i++) {
            char c = reference.charAt(i);
            row = c >= '0' && c <= '9' ? row * 10 + c - '0' : row;
        }
        return row;
    }
}
