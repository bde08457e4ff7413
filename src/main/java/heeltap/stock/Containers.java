package heeltap.stock;

import heeltap.quantity.Amount;
import heeltap.quantity.Exact;
import heeltap.quantity.Measure;
import heeltap.quantity.Pack;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * What an ingredient comes in, to tell what one counted container holds. The last purchase that came in such a container
 * says it, else the list pack; a purchase by the litre says nothing of a keg.
 *
 * @param newestFirst packs of the purchases, then the list pack
 */
public record Containers(List<Pack> newestFirst) {
    /** Nothing is known. */
    public static final Containers NONE = new Containers(List.of());

    private static final Set<String> KEGS =
            Set.of("keg", "kegs", "barrels", "cask", "tank", "fass", "fasser", "fut", "futs", "barril", "fusto");
    private static final Set<String> CASES = Set.of(
            "case", "cases", "cs", "box", "boxes", "bx", "carton", "cartons", "ctn", "crate", "crates", "tray", "trays",
            "kiste", "kisten", "karton", "kartons", "caisse", "caisses", "caja", "cajas", "cassa", "casse", "cartone");
    /** Common practice, no source: what is bought by ten litres and more in one container is drawn from a keg. */
    private static final Exact SMALLEST_KEG_ML = Exact.of(10_000);

    public Containers {
        newestFirst = List.copyOf(newestFirst);
    }

    /** @param bought in order of time */
    public static Containers of(List<Pack> bought, @Nullable Pack list) {
        List<Pack> packs = new ArrayList<>(bought);
        Collections.reverse(packs);
        if (list != null) {
            packs.add(list);
        }
        return new Containers(packs);
    }

    /** What a keg holds. */
    public Optional<Amount> keg() {
        return first(Containers::isKeg).map(Pack::unitSize);
    }

    /** What a case of several holds. */
    public Optional<Amount> crate() {
        return first(Containers::isCase).map(Pack::total);
    }

    /** What any pack holds: the last. */
    public Optional<Amount> pack() {
        return first(pack -> true).map(Pack::total);
    }

    /** What one bottle, can or bag holds: the single unit of the last pack that is no keg. */
    public Optional<Amount> bottle() {
        return first(pack -> !isKeg(pack)).map(Pack::unitSize);
    }

    private Optional<Pack> first(Predicate<Pack> fits) {
        return newestFirst.stream().filter(fits).findFirst();
    }

    private static boolean isKeg(Pack pack) {
        boolean large = pack.form().isEmpty()
                && pack.units().equals(Exact.ONE)
                && pack.unitSize().measure() == Measure.ML
                && !pack.unitSize().value().isLessThan(SMALLEST_KEG_ML);
        return KEGS.contains(pack.form()) || large;
    }

    private static boolean isCase(Pack pack) {
        return !KEGS.contains(pack.form()) && (pack.units().isGreaterThan(Exact.ONE) || CASES.contains(pack.form()));
    }
}
