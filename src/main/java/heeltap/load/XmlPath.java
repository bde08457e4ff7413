package heeltap.load;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Elements of an XML tree by the local names on the way to them. */
final class XmlPath {
    private XmlPath() {}

    static List<Element> all(Element from, String path) {
        List<Element> found = List.of(from);
        for (String name : path.split("/", -1)) {
            List<Element> next = new ArrayList<>();
            for (Element element : found) {
                for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
                    if (child instanceof Element inner && name.equals(inner.getLocalName())) {
                        next.add(inner);
                    }
                }
            }
            found = next;
        }
        return found;
    }

    /** Trimmed text of the first; empty where there is none. */
    static String text(Element from, String path) {
        List<Element> found = all(from, path);
        return found.isEmpty() ? "" : TextFold.trim(found.get(0).getTextContent());
    }

    static String attribute(Element from, String path, String name) {
        List<Element> found = all(from, path);
        return found.isEmpty() ? "" : found.get(0).getAttribute(name);
    }

    /** The number of the first; XML writes a decimal point and no grouping. */
    static Optional<BigDecimal> number(Element from, String path) {
        return Optional.ofNullable(number(text(from, path)));
    }

    /** The numbers of all; what is no number is left out. */
    static List<BigDecimal> numbers(Element from, String path) {
        List<BigDecimal> numbers = new ArrayList<>();
        for (Element element : all(from, path)) {
            BigDecimal number = number(TextFold.trim(element.getTextContent()));
            if (number != null) {
                numbers.add(number);
            }
        }
        return numbers;
    }

    private static @Nullable BigDecimal number(String text) {
        return text.matches("[+-]?\\d*\\.?\\d+") ? new BigDecimal(text) : null;
    }

    /** The amount in one currency where there are amounts in several; null where there is none. */
    static @Nullable BigDecimal amount(Element from, String path, String currency) {
        for (Element element : all(from, path)) {
            String own = element.getAttribute("currencyID");
            if (own.isEmpty() || own.equals(currency)) {
                return number(TextFold.trim(element.getTextContent()));
            }
        }
        return null;
    }
}
