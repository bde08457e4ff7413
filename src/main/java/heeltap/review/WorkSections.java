package heeltap.review;

import heeltap.document.Block;
import heeltap.document.Card;
import heeltap.document.Section;
import heeltap.document.WorkbookSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to work from: preparation sheets and spec cards. */
final class WorkSections {
    private static final String SHEETS = "preparation-sheets";
    private static final String CARDS = "spec-cards";

    private WorkSections() {}

    /** For the PDF; none where there is nothing to make. */
    static List<Section> sections(ReviewFigures review, Words words) {
        List<Section> sections = new ArrayList<>();
        preparations(review, words, 2)
                .ifPresent(block -> sections.add(new Section(SHEETS, words.say("section." + SHEETS), true, block)));
        specs(review, words, 3)
                .ifPresent(block -> sections.add(new Section(CARDS, words.say("section." + CARDS), true, block)));
        return sections;
    }

    /** For the workbook. */
    static List<WorkbookSheet> sheets(ReviewFigures review, Words words) {
        List<WorkbookSheet> sheets = new ArrayList<>();
        preparations(review, words, 1)
                .ifPresent(block -> sheets.add(new WorkbookSheet(words.say("section." + SHEETS), block)));
        specs(review, words, 1).ifPresent(block -> sheets.add(new WorkbookSheet(words.say("section." + CARDS), block)));
        return sheets;
    }

    private static Optional<List<Block>> preparations(ReviewFigures review, Words words, int columns) {
        List<Card> cards = PreparationSheets.cards(review.book(), review.now(), words);
        if (cards.isEmpty()) {
            return Optional.empty();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Paragraph(words.say("sheets.read")));
        blocks.add(new Block.Cards(columns, cards));
        blocks.add(new Block.Columns(
                List.of(new Block.Caution(words.say("caution.acids")), new Block.Caution(words.say("caution.keep")))));
        CostTables.fromPublishedTable(review.book(), review.now())
                .ifPresent(names -> blocks.add(new Block.Paragraph(words.say("sheets.published", names))));
        return Optional.of(blocks);
    }

    private static Optional<List<Block>> specs(ReviewFigures review, Words words, int columns) {
        List<Card> cards = SpecCards.cards(review.rows(), review.book().settings(), words);
        return cards.isEmpty()
                ? Optional.empty()
                : Optional.of(List.of(new Block.Paragraph(words.say("cards.read")), new Block.Cards(columns, cards)));
    }
}
