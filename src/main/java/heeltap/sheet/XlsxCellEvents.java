package heeltap.sheet;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Gathers the parts of each cell of a worksheet from its XML. */
abstract class XlsxCellEvents extends DefaultHandler {
    private final StringBuilder text = new StringBuilder();
    private int row;
    private int column = -1;
    private int style;
    private String type = "n";
    private @Nullable String value;
    private @Nullable String formula;
    private boolean inPhonetic;

    /**
     * A cell that holds something.
     *
     * @param row from 1
     * @param column from 0
     * @param style number of its style
     * @param type as the file says: n, s, str, inlineStr, b, e or d
     * @param value as stored; null where there is none
     * @param formula empty for a shared one that stands elsewhere; null where there is none
     */
    record RawCell(
            int row,
            int column,
            int style,
            String type,
            @Nullable String value,
            @Nullable String formula) {
        /** Whether the program that wrote the formula left its result out. */
        boolean isUncalculated() {
            return formula != null && (value == null || (value.isEmpty() && !type.equals("str")));
        }
    }

    abstract void cell(RawCell cell) throws SAXException;

    void rowStarts(int number, boolean hidden) {}

    void rowEnds() throws SAXException {}

    /** Columns that do not show, from 0; told before the rows. */
    void hiddenColumns(int first, int last) {}

    void merged(String range) {}

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) {
        switch (local) {
            case "row" -> {
                int number = XlsxStyles.number(attributes.getValue("r"));
                row = number > 0 ? number : row + 1;
                column = -1;
                rowStarts(row, XlsxWorkbook.isTrue(attributes.getValue("hidden")));
            }
            case "c" -> startCell(attributes);
            case "col" -> {
                if (XlsxWorkbook.isTrue(attributes.getValue("hidden"))) {
                    hiddenColumns(
                            XlsxStyles.number(attributes.getValue("min")) - 1,
                            XlsxStyles.number(attributes.getValue("max")) - 1);
                }
            }
            case "v", "f", "t" -> text.setLength(0);
            case "rPh" -> inPhonetic = true;
            case "mergeCell" ->
                merged(Optional.ofNullable(attributes.getValue("ref")).orElse(""));
            default -> {}
        }
    }

    private void startCell(Attributes attributes) {
        String reference = attributes.getValue("r");
        int named = reference == null ? -1 : columnOf(reference);
        column = named < 0 ? column + 1 : named;
        style = XlsxStyles.number(attributes.getValue("s"));
        String written = attributes.getValue("t");
        type = written == null ? "n" : written;
        value = null;
        formula = null;
    }

    @Override
    public void endElement(String uri, String local, String qualified) throws SAXException {
        switch (local) {
            case "v" -> value = text.toString();
            case "f" -> formula = text.toString();
            case "t" -> {
                if (!inPhonetic) {
                    value = value == null ? text.toString() : value + text;
                }
            }
            case "rPh" -> inPhonetic = false;
            case "c" -> {
                if (value != null || formula != null) {
                    cell(new RawCell(row, column, style, type, value, formula));
                }
            }
            case "row" -> rowEnds();
            default -> {}
        }
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        text.append(characters, start, length);
    }

    /** {@code AB12} stands in column 27. */
    static int columnOf(String reference) {
        int column = 0;
        for (int i = 0; i < reference.length(); i++) {
            char c = reference.charAt(i);
            if (c >= 'A' && c <= 'Z') {
                column = column * 26 + c - 'A' + 1;
            } else if (c != '$') {
                break;
            }
        }
        return column - 1;
    }
}
