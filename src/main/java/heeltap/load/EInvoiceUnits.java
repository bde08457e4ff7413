package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Pack;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the quantity of an e-invoice's line counts, by the code of its unit (UN/ECE recommendation 20, and 21 with an X
 * before it for packages) and the pack at the end of the product's name. A code that says nothing here gives a text that
 * no pack is read from, so that the line prices nothing.
 */
final class EInvoiceUnits {
    private static final Map<String, String> AMOUNTS = Map.ofEntries(
            Map.entry("LTR", "1 l"),
            Map.entry("MLT", "1 ml"),
            Map.entry("CMQ", "1 ml"),
            Map.entry("CLT", "1 cl"),
            Map.entry("DLT", "1 dl"),
            Map.entry("HLT", "100 l"),
            Map.entry("KGM", "1 kg"),
            Map.entry("GRM", "1 g"),
            Map.entry("LBR", "1 lb"),
            Map.entry("GLL", "1 gal"));
    /** Codes that count whatever the name says one is. */
    private static final Set<String> ONES =
            Set.of("", "C62", "EA", "H87", "NAR", "NMP", "XPP", "XUN", "XPK", "XNA", "ZZ", "XZZ", "SET", "NPR");

    private static final Map<String, Integer> DOZENS = Map.of("DZN", 12, "PR", 2, "GRO", 144);
    private static final Map<String, String> BOTTLES = Map.ofEntries(
            Map.entry("XBO", "bottle"),
            Map.entry("XBQ", "bottle"),
            Map.entry("XBS", "bottle"),
            Map.entry("XBV", "bottle"),
            Map.entry("XCX", "can"),
            Map.entry("XCA", "can"),
            Map.entry("XKG", "keg"),
            Map.entry("XBA", "barrel"),
            Map.entry("XJR", "jar"),
            Map.entry("XJG", "jug"),
            Map.entry("XTN", "tin"),
            Map.entry("XBG", "bag"),
            Map.entry("XSA", "sack"),
            Map.entry("XPO", "pouch"),
            Map.entry("XSH", "sachet"),
            Map.entry("XBH", "bunch"),
            Map.entry("XDR", "drum"));
    private static final Map<String, String> CASES = Map.of(
            "XCS", "case", "XCT", "carton", "XBX", "box", "XCR", "crate", "XCB", "crate", "XBC", "crate", "XPU", "tray",
            "XSY", "sleeve");

    private final PackReader packs;

    EInvoiceUnits(PackReader packs) {
        this.packs = packs;
    }

    /** The pack that the quantity counts; empty where the line says none. */
    String pack(EInvoices.Line line) {
        String unit = line.unit().strip();
        String amount = AMOUNTS.get(unit);
        if (amount != null) {
            return amount;
        }
        String end = end(line.product());
        if (ONES.contains(unit)) {
            return end;
        }
        Optional<Pack> named = end.isEmpty() ? Optional.empty() : packs.parse(end, Measure.ML);
        boolean single = named.filter(pack -> pack.units().equals(Exact.ONE)).isPresent();
        Integer many = DOZENS.get(unit);
        if (many != null) {
            return single ? many + " x " + end : end.isEmpty() ? "case of " + many : "1 " + unit;
        }
        String bottle = BOTTLES.get(unit);
        if (bottle != null) {
            return named.map(pack -> single ? end : one(pack)).orElse(bottle);
        }
        String box = CASES.get(unit);
        if (box != null) {
            return named.isEmpty() ? box : single ? "1 " + unit : end;
        }
        return "1 " + unit;
    }

    /** One bottle of a pack of several, as the unit says that bottles are counted. */
    private static String one(Pack pack) {
        String size = pack.unitSize()
                .value()
                .round(3, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
        return size + " " + pack.unitSize().measure().symbol();
    }

    /** The end of a name that is a pack; empty where none is. */
    private String end(String name) {
        for (int at = name.indexOf(' '); at >= 0; at = name.indexOf(' ', at + 1)) {
            String end = name.substring(at + 1);
            if (!end.isEmpty()
                    && Character.isDigit(end.charAt(0))
                    && packs.parse(end, Measure.ML).isPresent()) {
                return end;
            }
        }
        return "";
    }
}
