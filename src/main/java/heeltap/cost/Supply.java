package heeltap.cost;

import heeltap.match.Match;
import heeltap.mixture.Contents;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One unit of something a spec line can ask for: an ingredient, a preparation or a drink alike.
 *
 * @param traits how amounts of it convert; a drink counts in serves
 * @param unitCost for one of its measure as used; null where it has no cost
 * @param use ingredients as bought for one of its measure
 * @param preparations preparations in their measure for one of its measure, itself included
 * @param minutes labour in one of its measure
 * @param contents of one of its measure
 * @param juice of one ml of juice, for amounts of juice
 * @param batch how much a batch is; null for anything but a preparation, and where that is not known
 * @param causes why it has no cost; empty where it has one
 * @param unknown ingredients of which nothing is known what they are made of
 * @param published ingredients of which the published table told something
 */
record Supply(
        String name,
        Match.Kind kind,
        Traits traits,
        @Nullable Money unitCost,
        Map<String, Exact> use,
        Map<String, Exact> preparations,
        Exact minutes,
        Contents contents,
        Contents juice,
        @Nullable Exact batch,
        Set<String> allergens,
        Set<Cause> causes,
        Set<String> unknown,
        Set<String> published) {}
