package heeltap.menu;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.Optional;

/**
 * Where one group's classes are cut. A value that the group's sums do not give (nothing sold, no cost known) is empty,
 * and the classes that need it are empty too.
 *
 * @param popularityPercent rule over the number of drinks on the menu: Kasavana and Smith
 * @param equalSharePercent 100 over the number of drinks on the menu: Miller
 * @param margin average margin weighted by serves sold
 * @param costPercent the group's cost over its net sales
 * @param totalMargin mean of the drinks' total margins: Pavesic
 * @param goalStandard goal value of the group's average drink: Hayes and Huffman
 * @param marginAfterLabour as {@code margin}, after labour; empty also where no labour rate is set
 */
public record MenuThresholds(
        Exact popularityPercent,
        Exact equalSharePercent,
        Optional<Money> margin,
        Optional<Exact> costPercent,
        Optional<Money> totalMargin,
        Optional<Money> goalStandard,
        Optional<Money> marginAfterLabour) {}
