package heeltap.load;

import heeltap.record.SaleKind;
import org.jspecify.annotations.Nullable;

/** The words of tills for kinds of sale. */
final class SaleKinds {
    private SaleKinds() {}

    static boolean isKnown(String word) {
        return find(word) != null;
    }

    /** Null where the word is no kind of sale. */
    static @Nullable SaleKind find(String word) {
        String folded = TextFold.fold(word);
        if (RowWords.isFolded("void", folded)) {
            return SaleKind.VOID;
        }
        if (RowWords.isFolded("refund", folded)) {
            return SaleKind.REFUND;
        }
        if (RowWords.isFolded("complimentary", folded)) {
            return SaleKind.COMPLIMENTARY;
        }
        return RowWords.isFolded("sale", folded) ? SaleKind.SALE : null;
    }
}
