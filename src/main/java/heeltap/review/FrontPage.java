package heeltap.review;

import heeltap.document.Block;
import heeltap.document.CellValue;
import heeltap.document.Finding;
import heeltap.document.Format;
import heeltap.document.Section;
import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The first page, enough for the owner's meeting by itself. */
final class FrontPage {
    private static final int MOST_FINDINGS = 7;
    private static final String MARGIN = "margin";

    private final ReviewFigures review;
    private final Words words;

    FrontPage(ReviewFigures review, Words words) {
        this.review = review;
        this.words = words;
    }

    /** Fits one page: the figures across, then what stands out beside what to decide. */
    Section page(List<Finding> findings) {
        List<Block> left = new ArrayList<>();
        left.add(new Block.Heading(words.say("findings.heading")));
        left.add(
                findings.isEmpty()
                        ? new Block.Paragraph(words.say("findings.none"))
                        : new Block.Findings(
                                findings.stream().limit(MOST_FINDINGS).toList()));
        List<Block> right = new ArrayList<>();
        List<String> decisions = Decisions.of(review, words);
        if (!decisions.isEmpty()) {
            right.add(new Block.Heading(words.say("decide.heading")));
            right.add(new Block.Points(decisions));
        }
        right.add(new Block.Paragraph(joined()));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Figures(figures()));
        List<Block.Figure> steps = marginSteps();
        if (!steps.isEmpty()) {
            blocks.add(new Block.Heading(words.say("margin-steps.heading", monthBefore())));
            blocks.add(new Block.Figures(steps));
        }
        blocks.add(new Block.Beside(60, left, right));
        return new Section(Layout.FINDINGS, words.say("section." + Layout.FINDINGS), false, blocks);
    }

    /** What moved the margin since the month before, in the order of the steps. */
    private List<Block.Figure> marginSteps() {
        List<Block.Figure> figures = new ArrayList<>();
        for (LedgerTables.Chain chain : review.chains()) {
            boolean last = chain.fromMonth().equals(review.now().month().minusMonths(1));
            List<Money> printed = chain.printed();
            for (int i = 0; last && chain.measure().equals(MARGIN) && i < printed.size(); i++) {
                if (!printed.get(i).isZero()) {
                    String effect = chain.steps().get(i).effect().name().toLowerCase(Locale.ROOT);
                    figures.add(new Block.Figure(
                            words.say("effect." + effect),
                            CellValue.of(words.signedMoney(printed.get(i))),
                            Format.TEXT,
                            ""));
                }
            }
        }
        return figures;
    }

    /** The share of the till's money that was joined to drinks. */
    String joined() {
        Money all = review.tillMoney();
        return StockTables.percentOf(review.joinedMoney(), all)
                .map(percent -> words.say(
                        "joined",
                        words.figures().percent(percent, 2),
                        words.money(all),
                        words.money(review.asideMoney())))
                .orElseGet(() -> words.say("joined.none"));
    }

    List<Block.Figure> figures() {
        Overview now = Overview.of(review.now(), review.currency());
        Optional<Overview> before = review.before().map(month -> Overview.of(month, review.currency()));
        List<Block.Figure> figures = new ArrayList<>();
        figures.add(new Block.Figure(
                words.say("figure.net-sales"),
                CellValue.of(now.netSales()),
                Format.MONEY,
                before.map(old -> moneyChange(old.netSales(), now.netSales())).orElse(""),
                "drinks.net_sales"));
        figures.add(new Block.Figure(
                words.say("figure.cost-percent"),
                CellValue.of(now.costPercent().orElse(null)),
                Format.PERCENT,
                pointsChange(before.flatMap(Overview::costPercent), now.costPercent())));
        figures.add(new Block.Figure(
                words.say("figure.margin"),
                CellValue.of(now.margin()),
                Format.MONEY,
                before.map(old -> moneyChange(old.margin(), now.margin())).orElse(""),
                "drinks.total_margin"));
        figures.add(new Block.Figure(
                words.say("figure.sold"),
                CellValue.of(now.sold()),
                Format.COUNT,
                before.filter(old -> old.sold().isPositive())
                        .map(old -> percentChange(now.sold().minus(old.sold()).dividedBy(old.sold())))
                        .orElse(""),
                "drinks.sold"));
        figures.add(new Block.Figure(
                words.say("figure.unexplained"),
                CellValue.of(now.unexplained().orElse(null)),
                Format.MONEY,
                now.unexplained()
                        .map(all -> words.say(
                                "figure.unexplained.parts", words.money(now.missing()), words.money(now.surplus())))
                        .orElseGet(() -> words.say("figure.unexplained.unknown")),
                "stock.unexplained_cost"));
        return figures;
    }

    private String moneyChange(Money before, Money now) {
        return before.isPositive() ? percentChange(now.minus(before).dividedBy(before)) : "";
    }

    private String percentChange(Exact ratio) {
        Exact percent = ratio.times(Exact.HUNDRED);
        String sign = percent.isNegative() ? "" : "+";
        return words.say("change.on", sign + words.percent(percent), monthBefore());
    }

    private String pointsChange(Optional<Exact> before, Optional<Exact> now) {
        if (before.isEmpty() || now.isEmpty()) {
            return "";
        }
        Exact points = now.get().minus(before.get());
        String sign = points.isNegative() ? "" : "+";
        return words.say("change.points", sign + words.figures().number(points, Format.AMOUNT), monthBefore());
    }

    private String monthBefore() {
        return words.month(review.now().month().minusMonths(1));
    }
}
