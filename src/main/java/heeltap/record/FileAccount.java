package heeltap.record;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.source.Place;
import org.jspecify.annotations.Nullable;

/**
 * How one file or sheet was understood and what came of its rows: {@code rows = used + ignored + setAside}, and the same
 * for quantity and money. Rows are those below the heading row that are not blank.
 *
 * @param kind sales, invoices, stock, stock opening, losses, prices, the sheet's name of the book in lower case, {@code
 *     not read} or {@code refused}
 * @param headingRow 0 where there is none
 * @param dates how dates were read, such as {@code day-month}; empty where there are none
 * @param decimals {@code point}, {@code comma} or {@code stored} (a workbook's own numbers); empty where there are none
 * @param quantity of all rows in, as printed; null where the kind has none; so too the money
 * @param printedTotal the money total printed in the file; null where none
 */
public record FileAccount(
        Place place,
        String kind,
        String encoding,
        String delimiter,
        int headingRow,
        String dates,
        String decimals,
        int rows,
        int used,
        int ignored,
        int setAside,
        @Nullable Exact quantity,
        @Nullable Money money,
        @Nullable Exact usedQuantity,
        @Nullable Money usedMoney,
        @Nullable Money ignoredMoney,
        @Nullable Money setAsideMoney,
        @Nullable Money printedTotal) {
    /** The same with one used row set aside; its figures as printed. */
    FileAccount settingAside(SetAside row) {
        return new FileAccount(
                place,
                kind,
                encoding,
                delimiter,
                headingRow,
                dates,
                decimals,
                rows,
                used - 1,
                ignored,
                setAside + 1,
                quantity,
                money,
                usedQuantity == null || row.quantity() == null ? usedQuantity : usedQuantity.minus(row.quantity()),
                usedMoney == null || row.money() == null ? usedMoney : usedMoney.minus(row.money()),
                ignoredMoney,
                setAsideMoney == null || row.money() == null ? setAsideMoney : setAsideMoney.plus(row.money()),
                printedTotal);
    }
}
