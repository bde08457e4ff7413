package heeltap.document;

import heeltap.quantity.Exact;
import java.util.List;
import java.util.Optional;

/**
 * How one thing is made, to work from.
 *
 * @param title its name
 * @param summary a line under it; empty for none
 * @param headings of the columns of amounts
 * @param lines in the order of work, each with an amount for each heading
 * @param whole what the lines make together, with an amount for each heading; empty for none
 * @param own the heading of a column in the workbook where the reader types how much to make, and every amount follows;
 *     empty for none, as for lines that do not scale
 * @param facts name and value, short
 * @param steps the order of work, in sentences
 * @param cautions in sentences
 */
public record Card(
        String title,
        String summary,
        List<String> headings,
        List<Line> lines,
        Optional<Line> whole,
        String own,
        List<Fact> facts,
        List<String> steps,
        List<String> cautions) {
    /**
     * A line.
     *
     * @param note in small type under the name; empty for none
     * @param amounts one for each heading; empty where it is not known
     */
    public record Line(String name, String note, List<Optional<Measured>> amounts) {}

    /**
     * An amount as a scale or a measure shows it.
     *
     * @param amount exact
     * @param decimals shown, HALF_UP
     * @param least how many of them stand though they are zero
     * @param unit behind it; empty for none
     */
    public record Measured(Exact amount, int decimals, int least, String unit) {}

    /** Such as {@code Cost a batch}, {@code 7.50}. */
    public record Fact(String name, String value) {}

    /** @throws IllegalArgumentException if a line has not an amount for each heading */
    public Card {
        headings = List.copyOf(headings);
        lines = List.copyOf(lines);
        int width = headings.size();
        if (lines.stream().anyMatch(line -> line.amounts().size() != width)
                || whole.filter(line -> line.amounts().size() != width).isPresent()) {
            throw new IllegalArgumentException("a line of card " + title + " has not " + width + " amounts");
        }
    }
}
