package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The prices of a menu's groups against the principles taught in hospitality schools under the name of Omnès: opening
 * of the range, spread over three bands of equal width, and average price paid over average price offered. Limits as
 * commonly taught, from memory but for the opening of a short card.
 */
public final class PriceRange {
    /** Highest over lowest price, for a group of up to nine drinks and for a longer one. */
    static final Exact WIDEST_SHORT = Exact.of("2.5");

    static final Exact WIDEST_LONG = Exact.of(3);
    private static final int SHORT = 9;
    private static final Exact LEAST_RESPONSE = Exact.of("0.9");

    private PriceRange() {}

    /** One range for each group, in the order of first mention; drinks without a positive price are left out. */
    public static List<GroupRange> of(List<RangeItem> items) {
        Map<String, List<RangeItem>> groups = new LinkedHashMap<>();
        for (RangeItem item : items) {
            if (item.menuPrice().isPositive()) {
                groups.computeIfAbsent(item.group(), name -> new ArrayList<>()).add(item);
            }
        }
        List<GroupRange> ranges = new ArrayList<>();
        groups.forEach((name, drinks) -> ranges.add(range(name, drinks)));
        return List.copyOf(ranges);
    }

    /** The widest opening that the principle allows for so many drinks. */
    static Exact widest(int drinks) {
        return drinks <= SHORT ? WIDEST_SHORT : WIDEST_LONG;
    }

    private static GroupRange range(String name, List<RangeItem> items) {
        List<Money> prices = items.stream().map(RangeItem::menuPrice).sorted().toList();
        PriceBands bands = PriceBands.of(prices);
        Money offered = sum(prices).dividedBy(Exact.of(prices.size()));
        Exact sold = items.stream().map(RangeItem::sold).reduce(Exact.ZERO, Exact::plus);
        Money paid = sum(items.stream().map(RangeItem::paid).toList());
        var average =
                sold.isPositive() ? java.util.Optional.of(paid.dividedBy(sold)) : java.util.Optional.<Money>empty();
        var response = average.map(price -> price.dividedBy(offered));
        Exact opening = bands.highest().dividedBy(bands.lowest());
        List<RangeFinding> findings = new ArrayList<>();
        if (opening.isGreaterThan(widest(prices.size()))) {
            findings.add(RangeFinding.TOO_WIDE);
        }
        if (bands.middle() < bands.low() + bands.high()) {
            findings.add(RangeFinding.MIDDLE_TOO_THIN);
        }
        if (bands.high() > bands.low()) {
            findings.add(RangeFinding.MORE_HIGH_THAN_LOW);
        }
        response.filter(ratio -> ratio.isLessThan(LEAST_RESPONSE))
                .ifPresent(r -> findings.add(RangeFinding.PAID_BELOW));
        response.filter(ratio -> ratio.isGreaterThan(Exact.ONE)).ifPresent(r -> findings.add(RangeFinding.PAID_ABOVE));
        if (sold.signum() <= 0) {
            findings.add(RangeFinding.NOTHING_SOLD);
        }
        return new GroupRange(name, prices.size(), opening, bands, offered, average, response, List.copyOf(findings));
    }

    private static Money sum(List<Money> parts) {
        return parts.stream().reduce(Money.ZERO, Money::plus);
    }
}
