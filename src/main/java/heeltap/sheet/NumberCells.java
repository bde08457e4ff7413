package heeltap.sheet;

import heeltap.source.Cell;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.DateUtil;

/** Makes cells of stored numbers and their formats. Serves one reading. */
final class NumberCells {
    private final DataFormatter formatter = new DataFormatter(Locale.ENGLISH);
    private final Map<NumberFormat, Boolean> dates = new HashMap<>();
    private final boolean since1904;

    NumberCells(boolean since1904) {
        this.since1904 = since1904;
    }

    /**
     * How a cell shows its number.
     *
     * @param index the format's number in the workbook
     * @param code its code, such as {@code 0.00}
     */
    record NumberFormat(int index, String code) {
        static final NumberFormat GENERAL = new NumberFormat(0, "General");

        static NumberFormat builtIn(int index) {
            String code = BuiltinFormats.getBuiltinFormat(index);
            return new NumberFormat(index, code == null ? "General" : code);
        }

        /** General, text, no code at all, or one that only hides: the number shows as it is. */
        boolean isPlain() {
            return code.replace(";", "").isBlank() || code.equalsIgnoreCase("General") || code.equals("@");
        }
    }

    /** A number without a special format shows all of its digits. */
    Cell cell(int column, BigDecimal number, NumberFormat format) {
        if (format.isPlain()) {
            return new Cell(column, plain(number), number, null);
        }
        boolean date = dates.computeIfAbsent(format, f -> DateUtil.isADateFormat(f.index(), f.code()));
        String shown = formatter.formatRawCellContents(number.doubleValue(), format.index(), format.code(), since1904);
        boolean hides = Blank.is(shown) || shown.startsWith("#");
        return new Cell(
                column, hides ? plain(number) : shown, number, date ? StoredNumber.moment(number, since1904) : null);
    }

    private static String plain(BigDecimal number) {
        return Math.abs((long) number.scale()) + number.precision() > 40 ? number.toString() : number.toPlainString();
    }
}
