package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Units;
import heeltap.record.Folding;
import heeltap.record.SpecAmount;
import heeltap.record.SpecLine;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * The sheet Specs. A line that cannot be costed is kept with the reason, so that its drink is left out by name instead
 * of being costed without it.
 */
final class BookSpecs {
    private final BookSheet sheet;
    private final SpecText text;
    private final Map<String, String> leftOut;
    private final List<SpecLine> inEveryVersion = new ArrayList<>();
    private @Nullable String itemAbove;

    private BookSpecs(BookSheet sheet, SpecText text, Map<String, String> leftOut) {
        this.sheet = sheet;
        this.text = text;
        this.leftOut = leftOut;
    }

    /**
     * The lines in the order of their rows.
     *
     * @param isKnown whether the book has an ingredient, preparation or drink of that name
     * @param leftOut ingredients whose row was left out, folded, with why
     * @param spoiled preparations that cannot be costed, folded, with why
     */
    static List<SpecLine> read(
            BookSheet sheet,
            Units units,
            Predicate<String> isKnown,
            Map<String, String> leftOut,
            Map<String, String> spoiled) {
        SpecText text = new SpecText(sheet.numbers(BookTables.AMOUNT), units, isKnown);
        BookSpecs reader = new BookSpecs(sheet, text, leftOut);
        return reader.completed(sheet.read(reader::line), spoiled);
    }

    private @Nullable SpecLine line(BookRow row) {
        if (row.cell(BookTables.ITEM).isEmpty() && itemAbove != null) {
            spoilItem(row, itemAbove);
            return null;
        }
        String item = row.text(BookTables.ITEM);
        if (row.isLeftOut()) {
            return null;
        }
        itemAbove = item;
        String ingredient = row.text(BookTables.SPEC_INGREDIENT);
        SpecText.Line line = text.read(row.cell(BookTables.AMOUNT), row.text(BookTables.UNIT), ingredient);
        LocalDate from = row.date(BookTables.SPEC_FROM);
        Exact waste = row.number(BookTables.WASTE, Exact.ZERO);
        SpecAmount amount = amount(row, line);
        SpecLine result = new SpecLine(
                item,
                from,
                line.ingredient(),
                row.spoiled().isEmpty() ? amount : new SpecAmount.Unclear(row.spoiled()),
                row.peekText(BookTables.AMOUNT),
                line.unit(),
                waste,
                row.text(BookTables.NOTE),
                row.place());
        if (from == null && row.cell(BookTables.SPEC_FROM).isPresent()) {
            inEveryVersion.add(result);
        }
        return result;
    }

    /** A row without an item most likely belongs to the one above, which must not be costed without it. */
    private void spoilItem(BookRow row, String item) {
        row.leaveOut(Problem.fault(
                ProblemKind.VALUE_MISSING,
                row.place(BookTables.ITEM),
                "",
                "This cell must not be empty; the line may belong to \"" + item + "\" above it.",
                "Fill it in; until then \"" + item + "\" is left out."));
        inEveryVersion.add(new SpecLine(
                item,
                null,
                row.peekText(BookTables.SPEC_INGREDIENT),
                new SpecAmount.Unclear("The line at " + row.place() + " has no Item and may belong to it."),
                row.peekText(BookTables.AMOUNT),
                row.peekText(BookTables.UNIT),
                Exact.ZERO,
                "",
                row.place()));
    }

    private SpecAmount amount(BookRow row, SpecText.Line line) {
        if (line.amount() instanceof SpecAmount.Unclear unclear) {
            boolean blank = row.cell(BookTables.AMOUNT).isEmpty();
            row.fault(
                    blank ? ProblemKind.VALUE_MISSING : ProblemKind.VALUE_INVALID,
                    BookTables.AMOUNT,
                    unclear.reason(),
                    "Type an amount such as 22.5, 3/4 or to top, and its unit beside it");
            return unclear;
        }
        String why = leftOut.get(Folding.fold(line.ingredient()));
        if (why != null) {
            return new SpecAmount.Unclear("\"" + line.ingredient() + "\" is left out: " + why);
        }
        if (!line.notice().isEmpty()) {
            sheet.add(Problem.notice(
                    ProblemKind.VALUE_AMBIGUOUS,
                    row.place(BookTables.AMOUNT),
                    row.peekText(BookTables.AMOUNT),
                    line.notice(),
                    "Write the amount you mean."));
        }
        noteOpenNumber(row);
        return line.amount();
    }

    private void noteOpenNumber(BookRow row) {
        BookNumbers numbers = sheet.numbers(BookTables.AMOUNT);
        Optional<String> open = row.cell(BookTables.AMOUNT)
                .filter(cell -> cell.number() == null && !numbers.proven())
                .flatMap(cell -> BookNumbers.findOpen(cell.text()));
        open.ifPresent(token -> row.noteOpen(BookTables.AMOUNT, numbers, token));
    }

    /** Adds the lines that spoil an item in every version of its spec. */
    private List<SpecLine> completed(List<SpecLine> lines, Map<String, String> spoiled) {
        List<SpecLine> all = new ArrayList<>(lines);
        for (SpecLine spoiler : inEveryVersion) {
            for (SpecLine first : firstOfVersions(lines, Folding.fold(spoiler.item()))) {
                if (!Objects.equals(first.from(), spoiler.from()) || !lines.contains(spoiler)) {
                    all.add(withFrom(spoiler, first.from()));
                }
            }
        }
        spoiled.forEach((item, reason) -> firstOfVersions(lines, item)
                .forEach(first -> all.add(withAmount(first, new SpecAmount.Unclear(reason)))));
        return List.copyOf(all);
    }

    private static List<SpecLine> firstOfVersions(List<SpecLine> lines, String item) {
        Set<Optional<LocalDate>> versions = new HashSet<>();
        return lines.stream()
                .filter(line -> Folding.fold(line.item()).equals(item))
                .filter(line -> versions.add(Optional.ofNullable(line.from())))
                .toList();
    }

    private static SpecLine withAmount(SpecLine line, SpecAmount amount) {
        return new SpecLine(
                line.item(),
                line.from(),
                line.ingredient(),
                amount,
                line.amountText(),
                line.unit(),
                line.wastePercent(),
                line.note(),
                line.place());
    }

    private static SpecLine withFrom(SpecLine line, @Nullable LocalDate from) {
        return new SpecLine(
                line.item(),
                from,
                line.ingredient(),
                line.amount(),
                line.amountText(),
                line.unit(),
                line.wastePercent(),
                line.note(),
                line.place());
    }
}
