package heeltap.sheet;

import heeltap.sheet.NumberCells.NumberFormat;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** The styles part, as far as it says how numbers show. */
final class XlsxStyles extends DefaultHandler {
    private final Map<Integer, String> codes = new HashMap<>();
    private final List<NumberFormat> styles = new ArrayList<>();
    private boolean inCellStyles;

    /** The format of a cell's style number; General where there is no such style. */
    NumberFormat format(int style) {
        return style < 0 || style >= styles.size() ? NumberFormat.GENERAL : styles.get(style);
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) {
        switch (local) {
            case "cellXfs" -> inCellStyles = true;
            case "numFmt" -> {
                String code = attributes.getValue("formatCode");
                int index = number(attributes.getValue("numFmtId"));
                if (code != null && !inCellStyles) {
                    codes.putIfAbsent(index, code);
                }
            }
            case "xf" -> {
                if (inCellStyles) {
                    int index = number(attributes.getValue("numFmtId"));
                    String code = codes.get(index);
                    styles.add(code == null ? NumberFormat.builtIn(index) : new NumberFormat(index, code));
                }
            }
            default -> {}
        }
    }

    @Override
    public void endElement(String uri, String local, String qualified) {
        if (local.equals("cellXfs")) {
            inCellStyles = false;
        }
    }

    static int number(@Nullable String text) {
        if (text == null) {
            return 0;
        }
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException notANumber) {
            return 0;
        }
    }
}
