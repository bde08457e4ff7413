package heeltap.cli;

import heeltap.document.Figures;
import heeltap.document.Finding;
import heeltap.review.Reviews.Review;
import heeltap.review.Reviews.Summary;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The short, aligned summary at the end of a command. */
final class SummaryLines {
    private static final int FINDINGS = 3;

    private SummaryLines() {}

    /** @param reports PDF, workbook and folder of tables; empty where nothing was written */
    static void print(Review review, List<Path> reports, Console console) {
        Summary summary = review.summary();
        Figures figures =
                new Figures(review.document().language(), review.document().currency());
        List<String[]> lines = new ArrayList<>();
        lines.add(new String[] {"Files read", String.valueOf(summary.filesRead())});
        lines.add(new String[] {
            "Money joined",
            summary.joinedPercent()
                    .map(percent -> figures.percent(percent, 2) + " of " + figures.money(summary.tillMoney()))
                    .orElse("the till gave no money")
        });
        lines.add(
                new String[] {"Set aside", summary.rowsSetAside() + (summary.rowsSetAside() == 1 ? " row" : " rows")});
        lines.add(new String[] {"Checks", summary.controlsHeld() + " of " + summary.controls() + " hold"});
        int number = 0;
        for (Finding finding : summary.findings().stream().limit(FINDINGS).toList()) {
            lines.add(new String[] {number++ == 0 ? "Findings" : "", finding.sentence()});
        }
        String[] names = {"PDF", "Workbook", "Tables"};
        for (int i = 0; i < reports.size(); i++) {
            lines.add(new String[] {names[i], reports.get(i).toString()});
        }
        console.out()
                .println(console.strong(
                        review.document().bar() + ": " + review.document().title()));
        lines.forEach(line -> console.out().printf(java.util.Locale.ROOT, "  %-13s %s\n", line[0], line[1]));
    }
}
