package heeltap.document;

import java.time.YearMonth;
import java.util.Currency;
import java.util.List;
import java.util.Locale;

/**
 * Everything a report says, before any format. PDF, workbook and tables all come from this one value, so that their
 * figures agree.
 *
 * @param title such as {@code Review of October 2026}
 * @param sections the PDF, in order
 * @param sheets the workbook, in order
 * @param tables the CSV files, in the order of the contract
 */
public record Document(
        String bar,
        YearMonth month,
        Locale language,
        Currency currency,
        String title,
        List<Section> sections,
        List<WorkbookSheet> sheets,
        List<Table> tables) {}
