package heeltap.document;

import java.util.List;

/** A piece of a section. */
public sealed interface Block
        permits Block.Paragraph,
                Block.Heading,
                Block.Caution,
                Block.Points,
                Block.Figures,
                Block.Findings,
                Block.TableView,
                Block.Columns,
                Block.Beside,
                Block.Cards,
                ScatterChart,
                BarChart,
                LineChart {
    /** A paragraph. */
    record Paragraph(String text) implements Block {}

    /** A heading inside a section. */
    record Heading(String text) implements Block {}

    /** A paragraph that warns: set apart with the word Caution and a rule beside it. */
    record Caution(String text) implements Block {}

    /** Short points. */
    record Points(List<String> points) implements Block {}

    /** The month in a few figures, side by side. */
    record Figures(List<Figure> figures) implements Block {}

    /**
     * One figure of the month.
     *
     * @param name such as {@code Net sales}
     * @param change from last month in words, such as {@code +3.2 % on September}; empty where there is none
     * @param total the table and column of whose total row it is, as {@code table.key}, so that it follows the workbook's
     *     table; empty: it stands for itself
     */
    record Figure(String name, CellValue value, Format format, String change, String total) {
        public Figure(String name, CellValue value, Format format, String change) {
            this(name, value, format, change, "");
        }
    }

    /** The ranked findings. */
    record Findings(List<Finding> findings) implements Block {}

    /**
     * A table as a page shows it. A sheet of the workbook has all its columns, those it does not show folded away at
     * the right.
     *
     * @param keys the columns shown, in this order
     */
    record TableView(Table table, List<String> keys) implements Block {}

    /** Blocks that a page sets in two columns, down the first and then down the second; they go on over pages. */
    record Columns(List<Block> blocks) implements Block {}

    /**
     * Two short stacks of blocks side by side, never parted by a page's end where they fit on one.
     *
     * @param leftPercent how much of the width the left stack takes, 1 to 99
     */
    record Beside(int leftPercent, List<Block> left, List<Block> right) implements Block {}

    /**
     * Cards to work from, in columns; none is parted by a page's end where it fits on one.
     *
     * @param columns on a page, 2 or 3
     */
    record Cards(int columns, List<Card> cards) implements Block {}
}
