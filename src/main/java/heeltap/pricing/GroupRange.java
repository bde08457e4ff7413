package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.List;
import java.util.Optional;

/**
 * The price range of one group.
 *
 * @param group name
 * @param items drinks with a price
 * @param opening highest over lowest price
 * @param bands counts and limits
 * @param offeredAverage mean of the menu prices
 * @param soldAverage what guests paid over serves sold; empty where nothing was sold
 * @param response sold over offered average
 * @param findings none where the group keeps the principles
 */
public record GroupRange(
        String group,
        int items,
        Exact opening,
        PriceBands bands,
        Money offeredAverage,
        Optional<Money> soldAverage,
        Optional<Exact> response,
        List<RangeFinding> findings) {}
