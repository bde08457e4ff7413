package heeltap.review;

import heeltap.document.Format;
import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Cut;
import heeltap.document.ScatterChart.Kind;
import heeltap.document.ScatterChart.Point;
import heeltap.quantity.Exact;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** The plots of the what-if sheet: marks and cuts look their places up on it, so that they follow what is typed. */
final class WhatIfPlots {
    private final WhatIfGroup group;
    private final int row;
    private final Words words;

    private WhatIfPlots(WhatIfGroup group, int row, Words words) {
        this.group = group;
        this.row = row;
        this.words = words;
    }

    /** @param row of the group in the table of totals */
    static List<ScatterChart> of(WhatIfGroup group, int row, Words words) {
        WhatIfPlots plots = new WhatIfPlots(group, row, words);
        return List.of(plots.cost(), plots.margin());
    }

    private ScatterChart cost() {
        Exact equal = Exact.ofPhysical(group.equalShare());
        return plot(
                "cost",
                Format.PERCENT,
                "what_if.cost_percent",
                group::costPercent,
                new Cut(equal, words.say("plot.equal-share", words.percent(equal))),
                new Cut(
                        Exact.ofPhysical(group.costCut()),
                        words.say("what-if.cost-cut"),
                        "what_if_totals.cost_cut_percent",
                        row));
    }

    private ScatterChart margin() {
        Exact from = Exact.ofPhysical(group.popularFrom());
        return plot(
                "margin",
                Format.UNIT_MONEY,
                "what_if.margin",
                group::margin,
                new Cut(from, words.say("plot.popular-from", words.percent(from))),
                new Cut(
                        Exact.ofPhysical(group.marginCut()),
                        words.say("what-if.margin-cut"),
                        "what_if_totals.margin_cut",
                        row));
    }

    private ScatterChart plot(
            String kind, Format format, String column, IntToDoubleFunction height, Cut vertical, Cut horizontal) {
        Kind mark = new Kind(0, words.say("what-if.mark"));
        List<Point> points = new ArrayList<>();
        for (int j = 0; j < group.drinks().size(); j++) {
            if (group.analysed()[j]) {
                points.add(new Point(
                        group.drinks().get(j).price().drink().drink(),
                        Exact.ofPhysical(group.popularity(j)),
                        Exact.ofPhysical(height.applyAsDouble(j)),
                        mark,
                        Exact.ZERO,
                        true));
            }
        }
        return new ScatterChart(
                "what-if-" + (row + 1) + "-" + kind,
                words.say("what-if." + kind + ".title", group.group().group()),
                "",
                words.say("plot.popularity"),
                words.say("plot." + kind + ".axis"),
                Format.PERCENT,
                format,
                points,
                List.of(vertical),
                List.of(horizontal),
                List.of(),
                "what_if.popularity_percent",
                column,
                "what_if.drink");
    }
}
