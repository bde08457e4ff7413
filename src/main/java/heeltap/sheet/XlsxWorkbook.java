package heeltap.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** The workbook part: the sheets in their order and the date system. */
final class XlsxWorkbook extends DefaultHandler {
    private final List<Entry> sheets = new ArrayList<>();
    private boolean since1904;

    /**
     * A sheet as the workbook lists it.
     *
     * @param name as on its tab
     * @param relation leads to its part
     * @param hidden whether its tab is not shown
     */
    record Entry(String name, String relation, boolean hidden) {}

    List<Entry> sheets() {
        return sheets;
    }

    boolean since1904() {
        return since1904;
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) {
        if (local.equals("sheet")) {
            String state = Optional.ofNullable(attributes.getValue("state")).orElse("visible");
            String name = Optional.ofNullable(attributes.getValue("name")).orElse("");
            sheets.add(new Entry(name, relation(attributes), !state.equals("visible")));
        } else if (local.equals("workbookPr")) {
            since1904 = isTrue(attributes.getValue("date1904"));
        }
    }

    static boolean isTrue(@Nullable String value) {
        return "1".equals(value) || "true".equals(value);
    }

    /** The attribute {@code id} of the relationships' namespace, of which there are two. */
    private static String relation(Attributes attributes) {
        for (int i = 0; i < attributes.getLength(); i++) {
            if (attributes.getLocalName(i).equals("id") && attributes.getURI(i).endsWith("relationships")) {
                return attributes.getValue(i);
            }
        }
        return "";
    }
}
