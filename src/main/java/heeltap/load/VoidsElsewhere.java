package heeltap.load;

import heeltap.source.Place;
import heeltap.source.ProblemKind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Voids whose cancelled row stands in another sheet: it is the next of their ticket, item, quantity and money. */
final class VoidsElsewhere {
    private final Map<String, List<Cancelling>> open = new HashMap<>();

    /** A void; its money is null where none is printed. */
    private record Cancelling(BigDecimal quantity, @Nullable BigDecimal money, Place place) {
        boolean cancels(SaleRow sale) {
            BigDecimal other = sale.quantity;
            return other != null
                    && quantity.compareTo(other.abs()) == 0
                    && (money == null || (sale.money != null && money.compareTo(sale.money.abs()) == 0));
        }
    }

    /** Notes a void that cancels no row of its own sheet. */
    void add(Fields fields, SaleRow sale, Place place) {
        BigDecimal quantity = sale.quantity;
        if (quantity != null) {
            BigDecimal money = sale.money == null ? null : sale.money.abs();
            open.computeIfAbsent(Returns.key(fields), key -> new ArrayList<>())
                    .add(new Cancelling(quantity.abs(), money, place));
        }
    }

    /** Whether a void of another sheet cancels this row; each cancels one. */
    boolean cancels(Fields fields, SaleRow sale) {
        List<Cancelling> voids = open.isEmpty() ? null : open.get(Returns.key(fields));
        for (int i = 0; voids != null && i < voids.size(); i++) {
            if (voids.get(i).cancels(sale)) {
                voids.remove(i);
                return true;
            }
        }
        return false;
    }

    /** Tells of the voids that no row answers to, once a sheet. */
    void tellOpen(ProblemLog log) {
        Map<Place, List<Place>> bySheet = new HashMap<>();
        open.values()
                .forEach(voids -> voids.forEach(
                        each -> bySheet.computeIfAbsent(each.place().withRow(0), sheet -> new ArrayList<>())
                                .add(each.place())));
        bySheet.forEach((sheet, places) -> log.notice(
                ProblemKind.VALUE_DOUBTFUL,
                places.stream().min(Place::compareTo).orElse(sheet),
                "",
                (places.size() == 1 ? "This void names" : places.size() + " voids from here on name")
                        + " no row of the same ticket, item, quantity and money, so nothing is taken off.",
                "Nothing is to be done if the till left the cancelled rows out itself."));
    }
}
