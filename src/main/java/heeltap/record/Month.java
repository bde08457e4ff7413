package heeltap.record;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a month's folder holds, as written.
 *
 * @param closing rows of {@code stock*} files; null-free: empty means the month was not counted
 * @param opening rows of {@code stock-opening*} files; empty means none is there
 * @param setAside rows that could not be read or do not belong to the month; unknown names come later
 * @param files one entry a file or sheet
 */
public record Month(
        YearMonth month,
        List<SaleTotal> sales,
        List<Invoice> invoices,
        List<StockCount> closing,
        List<StockCount> opening,
        List<Loss> losses,
        List<SetAside> setAside,
        List<FileAccount> files) {
    /** The account of a file and sheet. */
    public Optional<FileAccount> findFile(String file, String sheet) {
        return files.stream()
                .filter(account -> account.place().file().equals(file)
                        && account.place().sheet().equals(sheet))
                .findFirst();
    }

    /** The same where rows that were read turn out to fit nothing: their files count them as set aside. */
    public Month settingAside(List<SetAside> rows) {
        List<SetAside> allRows = new ArrayList<>(setAside);
        allRows.addAll(rows);
        List<FileAccount> accounts = new ArrayList<>();
        for (FileAccount file : files) {
            FileAccount account = file;
            for (SetAside row : rows) {
                boolean inFile = row.place().file().equals(file.place().file())
                        && row.place().sheet().equals(file.place().sheet());
                account = inFile ? account.settingAside(row) : account;
            }
            accounts.add(account);
        }
        return new Month(month, sales, invoices, closing, opening, losses, List.copyOf(allRows), List.copyOf(accounts));
    }
}
