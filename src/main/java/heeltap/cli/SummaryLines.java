package heeltap.cli;

import heeltap.document.Figures;
import heeltap.document.Finding;
import heeltap.quantity.Money;
import heeltap.report.ReportFiles;
import heeltap.review.Reviews.Review;
import heeltap.review.Reviews.Summary;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The short, aligned summary at the end of a command. */
final class SummaryLines {
    static final int FINDINGS = 3;

    /** @param whole whether the text stays on one line, so that it can be copied */
    private record Line(String label, String text, boolean whole) {
        static Line of(String label, String text) {
            return new Line(label, text, false);
        }

        static Line of(String label, Path path) {
            return new Line(label, path.toString(), true);
        }
    }

    private SummaryLines() {}

    /** @param reports empty where nothing was written */
    static void print(Review review, Optional<ReportFiles.Written> reports, Screen screen) {
        SummaryWords words = SummaryWords.in(review.document().language());
        List<Line> lines = new ArrayList<>(counts(review, words));
        List<Finding> findings = review.summary().findings();
        for (Finding finding : findings.subList(0, Math.min(FINDINGS, findings.size()))) {
            lines.add(Line.of(words.say("findings"), finding.sentence()));
        }
        reports.ifPresent(written -> {
            lines.add(Line.of(words.say("pdf"), written.pdf()));
            lines.add(Line.of(words.say("workbook"), written.workbook()));
            lines.add(Line.of(words.say("tables"), written.tables()));
        });
        int width = lines.stream().mapToInt(line -> line.label().length()).max().orElse(0);
        screen.heading(review.document().bar() + ": " + review.document().title());
        String before = "";
        for (Line line : lines) {
            screen.labelled(line.label().equals(before) ? "" : line.label(), width, line.text(), line.whole());
            before = line.label();
        }
    }

    private static List<Line> counts(Review review, SummaryWords words) {
        Summary summary = review.summary();
        Figures figures =
                new Figures(review.document().language(), review.document().currency());
        String joined = summary.joinedPercent()
                .map(percent -> words.say("joined.of", figures.percent(percent, 2), figures.money(summary.tillMoney())))
                .orElseGet(() -> words.say("joined.none"));
        Money money = summary.tillMoney().minus(summary.joinedMoney());
        String aside = money.isZero()
                ? words.say("aside.rows", summary.rowsSetAside())
                : words.say("aside.rows-money", summary.rowsSetAside(), figures.money(money));
        return List.of(
                Line.of(words.say("files"), String.valueOf(summary.filesRead())),
                Line.of(words.say("joined"), joined),
                Line.of(words.say("aside"), aside),
                Line.of(words.say("checks"), words.say("checks.hold", summary.controlsHeld(), summary.controls())));
    }
}
