package heeltap.load;

import heeltap.record.Book;
import heeltap.record.FileAccount;
import heeltap.record.SetAside;
import java.util.List;

/**
 * A book with the account of its sheets.
 *
 * @param book what could be read
 * @param files one entry for each sheet handed in, in the order of the sheets
 * @param setAside rows that could not be used, by place
 */
public record LoadedBook(Book book, List<FileAccount> files, List<SetAside> setAside) {}
