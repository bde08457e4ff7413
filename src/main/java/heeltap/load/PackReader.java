package heeltap.load;

import heeltap.quantity.Measure;
import heeltap.quantity.Pack;
import java.util.Optional;

/** Reads the text of a pack such as {@code 6 x 70cl}. */
@FunctionalInterface
public interface PackReader {
    /**
     * @param text as printed
     * @param measure decides what a unit such as {@code oz} means
     * @return empty where the text is no pack
     */
    Optional<Pack> parse(String text, Measure measure);
}
