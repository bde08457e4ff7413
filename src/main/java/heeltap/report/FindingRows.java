package heeltap.report;

import heeltap.document.Finding;
import heeltap.document.Format;
import heeltap.quantity.Exact;
import heeltap.report.Faces.Face;
import java.util.ArrayList;
import java.util.List;

/** Findings under each other: rank, sentence, amount, and the page to read on, which is a link. */
final class FindingRows {
    private static final Ink RANK = new Ink(Face.SERIF, 15, Look.ACCENT);
    private static final Ink LINK = Ink.SMALL.in(Look.ACCENT);
    private static final float HANG = 20;

    private final Faces faces;
    private final Printing printing;
    private final float width;
    private final Ink sentence;
    private final Ink amount;

    /** @param size of the sentences, in points */
    FindingRows(Faces faces, Printing printing, float width, float size) {
        this.faces = faces;
        this.printing = printing;
        this.width = width;
        this.sentence = Ink.BODY.at(size);
        this.amount = new Ink(Face.BOLD, size, Look.INK);
    }

    List<Slab> slabs(List<Finding> findings, Tag list) {
        float linkWidth = LINK.width(faces, printing.words().get("page", "99"));
        float amountWidth = 0;
        for (Finding finding : findings) {
            amountWidth = Math.max(amountWidth, amount.width(faces, amount(finding)));
        }
        float amountRight = width - linkWidth - 10;
        float room = amountRight - amountWidth - 12 - HANG;
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            slabs.add(row(i + 1, findings.get(i), list.child("LI").child("LBody"), room, amountRight));
        }
        return slabs;
    }

    private Slab row(int rank, Finding finding, Tag body, float room, float amountRight) {
        String number = printing.number(Exact.of(rank), Format.COUNT);
        List<String> lines = sentence.wrap(faces, finding.sentence(), room);
        float height = lines.size() * sentence.leading() + 9;
        return Slab.of(0, height, (canvas, x, top) -> {
            float baseline = top + 4 + sentence.size();
            canvas.text(body, RANK, x, baseline + 1, number);
            TextSlabs.lines(canvas, body, sentence, x + HANG, top + 4, lines);
            if (finding.amount() != null) {
                canvas.textRight(body, amount, x + amountRight, baseline, amount(finding));
            }
            int page = canvas.pageOf(finding.section());
            if (page > 0) {
                String words = printing.words().get("page", page);
                canvas.textRight(body, LINK, x + width, baseline, words);
                canvas.link(finding.section(), x, top, width, height);
            }
            canvas.rule(x, x + width, top + height, 0.4f, Look.HAIRLINE);
        });
    }

    private String amount(Finding finding) {
        return finding.amount() == null ? "" : printing.money(finding.amount());
    }
}
