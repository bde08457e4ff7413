package heeltap.review;

import heeltap.pricing.EarningSuggestion;
import heeltap.pricing.GroupDemand;
import heeltap.pricing.GroupSuggestion;
import heeltap.pricing.PriceResponse;
import java.util.List;

/**
 * What follows from the suggested prices of one group: the figures with which the what-if sheet starts. Figures of demand,
 * not of the books, so binary numbers serve.
 *
 * @param group the suggestions
 * @param demand at the best single figures
 * @param drinks those that demand covers, in its order
 * @param analysed whether each takes part in the classes
 * @param popularFrom popularity rule over the drinks of the group's menu, in percent
 * @param equalShare 100 over them
 * @param units expected of each at its suggested price
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, never leaves the package
record WhatIfGroup(
        GroupSuggestion group,
        GroupDemand demand,
        List<EarningSuggestion> drinks,
        boolean[] analysed,
        double popularFrom,
        double equalShare,
        double[] units) {
    /** Below this two figures count as equal: ties are on the good side. */
    static final double TIE = 1e-9;

    boolean isAnalysed() {
        for (boolean one : analysed) {
            if (one) {
                return true;
            }
        }
        return false;
    }

    PriceResponse response() {
        return demand.response();
    }

    double priceNow(int drink) {
        return drinks.get(drink)
                .price()
                .drink()
                .priceNow()
                .orElseThrow()
                .amount()
                .toDouble();
    }

    double priceTyped(int drink) {
        return drinks.get(drink).price().suggested().orElseThrow().amount().toDouble();
    }

    double netNow(int drink) {
        return drinks.get(drink)
                .price()
                .drink()
                .netPrice()
                .orElseThrow()
                .amount()
                .toDouble();
    }

    double net(int drink) {
        return netNow(drink) * priceTyped(drink) / priceNow(drink);
    }

    double cost(int drink) {
        return drinks.get(drink).price().drink().cost().orElseThrow().amount().toDouble();
    }

    double costPercent(int drink) {
        return cost(drink) / net(drink) * 100;
    }

    double margin(int drink) {
        return net(drink) - cost(drink);
    }

    double totalMargin(int drink) {
        return units[drink] * margin(drink);
    }

    double totalMarginNow(int drink) {
        return demand.unitsNow()[drink] * (netNow(drink) - cost(drink));
    }

    /** {@code exp(-b (h(p') - h(p)))} times the units now. */
    double pull(int drink) {
        PriceResponse r = response();
        double hurt = Math.pow(priceTyped(drink) / r.usualPrice(), r.power())
                - Math.pow(priceNow(drink) / r.usualPrice(), r.power());
        return demand.unitsNow()[drink] * Math.exp(-r.within() * r.usualPrice() / r.power() * hurt);
    }

    double popularity(int drink) {
        double sum = 0;
        for (int j = 0; j < units.length; j++) {
            sum += analysed[j] ? units[j] : 0;
        }
        return units[drink] / sum * 100;
    }

    /** Average margin of the drinks in the analysis, weighted by units. */
    double marginCut() {
        double sum = 0;
        double earned = 0;
        for (int j = 0; j < units.length; j++) {
            sum += analysed[j] ? units[j] : 0;
            earned += analysed[j] ? totalMargin(j) : 0;
        }
        return earned / sum;
    }

    /** Cost over net sales of the drinks in the analysis. */
    double costCut() {
        double sales = 0;
        double cost = 0;
        for (int j = 0; j < units.length; j++) {
            sales += analysed[j] ? units[j] * net(j) : 0;
            cost += analysed[j] ? units[j] * cost(j) : 0;
        }
        return cost / sales * 100;
    }

    /** star, plowhorse, puzzle or dog. */
    String marginClass(int drink) {
        boolean popular = popularity(drink) >= popularFrom - TIE;
        boolean profitable = margin(drink) >= marginCut() - TIE;
        return popular ? profitable ? "star" : "plowhorse" : profitable ? "puzzle" : "dog";
    }

    double sum(java.util.function.IntToDoubleFunction figure) {
        double sum = 0;
        for (int j = 0; j < units.length; j++) {
            sum += figure.applyAsDouble(j);
        }
        return sum;
    }
}
