package heeltap.load;

import heeltap.record.SaleKind;
import heeltap.record.Setting;
import heeltap.source.Cell;
import heeltap.source.Place;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import heeltap.source.Sheet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The first pass over a sheet: sees every row and decides how the columns are read. */
final class Evidence {
    private static final int MOST_WORDS = 500;
    /** Up to one row in so many may lack cells and is then damaged; more, and the file leaves blank ends out. */
    private static final int FEW = 20;

    private final Layout layout;
    private final MonthContext context;
    private final boolean since1904;
    private final @Nullable NumberEvidence[] numbers = new @Nullable NumberEvidence[Field.SIZE];
    private final DateEvidence dates;
    private final Set<String> kinds = new TreeSet<>();
    private final Set<String> voids = new TreeSet<>();
    private final Set<String> items = new HashSet<>();
    private boolean discountRows;
    private long times;
    private boolean endsFilled = true;
    private long full;
    private long narrow;
    private long noTimes;

    private Evidence(Layout layout, MonthContext context, boolean since1904) {
        this.since1904 = since1904;
        this.layout = layout;
        this.context = context;
        this.dates = new DateEvidence(context.month(), since1904);
        for (Field field : layout.columns().keySet()) {
            if (field.isNumber()) {
                numbers[field.at()] = new NumberEvidence();
            }
        }
    }

    static Reading read(Sheet sheet, Layout layout, MonthContext context, ProblemLog log) {
        Evidence evidence = new Evidence(layout, context, sheet.facts().since1904());
        Fields fields = new Fields(layout);
        Field[] present = layout.columns().keySet().toArray(Field[]::new);
        boolean sections = SectionDate.isKnownIn(layout);
        sheet.read(row -> {
            if (row.number() > layout.headingRow() && !row.isBlank()) {
                fields.load(row);
                evidence.seeWidth(row);
                Cell section = sections ? SectionDate.find(row, context.month()) : null;
                if (section != null && fields.find(Field.DATE) == null) {
                    evidence.dates.see(section);
                }
                for (Field field : present) {
                    Cell cell = fields.find(field);
                    if (cell != null) {
                        evidence.see(field, cell);
                    }
                }
            }
            return true;
        });
        return evidence.decide(sheet, log);
    }

    /** A row of one cell is a section or a remark, whatever the width of the others. */
    private void seeWidth(Row row) {
        if (row.width() == layout.width()) {
            full++;
            endsFilled &= row.cells().get(row.cells().size() - 1).column() == row.width() - 1;
        } else if (row.width() < layout.width() && row.cells().size() > 1) {
            narrow++;
        }
    }

    /** Whether rows that lack cells are damaged, rather than written without their blank ends. */
    private boolean isEven() {
        Field last = null;
        for (Map.Entry<Field, Integer> column : layout.columns().entrySet()) {
            last = column.getValue() == layout.width() - 1 ? column.getKey() : last;
        }
        boolean number = last != null && last.isNumber();
        return narrow * FEW <= full || (narrow * 2 < full && number && endsFilled);
    }

    private void see(Field field, Cell cell) {
        NumberEvidence number = numbers[field.at()];
        if (number != null) {
            number.see(cell);
            return;
        }
        switch (field) {
            case DATE -> dates.see(cell);
            case TIME -> {
                if (Reading.time(cell) == null) {
                    noTimes++;
                } else {
                    times++;
                }
            }
            case ITEM -> seeItem(cell.text());
            case KIND -> see(kinds, cell);
            case VOID -> see(voids, cell);
            default -> {
                // names and codes are read as they are
            }
        }
    }

    private void seeItem(String item) {
        boolean fresh = items.size() >= MOST_WORDS ? !items.contains(item) : items.add(item);
        discountRows |= fresh && TicketDiscounts.mayBe(item);
    }

    private static void see(Set<String> words, Cell cell) {
        if (words.size() < MOST_WORDS) {
            words.add(TextFold.trim(cell.text()));
        }
    }

    private Reading decide(Sheet sheet, ProblemLog log) {
        DateOrder set = context.dates(layout.sheet().file());
        List<DateEvidence.Decision> orders = dates.decide(set, DateOrder.of(context.language()));
        tellDates(orders, log);
        @Nullable Decimals[] decimals = decimals(sheet, log);
        boolean hasKinds = layout.has(Field.KIND) && isKinds(log);
        boolean hasMarks = layout.has(Field.VOID) && isVoids(log);
        boolean mayVoid =
                hasKinds && (kinds.size() >= MOST_WORDS || kinds.stream().anyMatch(Evidence::isVoid));
        return new Reading(
                decimals,
                orders,
                context.month(),
                since1904,
                dates.hasClock(),
                layout.has(Field.TIME) && isTimes(log),
                hasKinds,
                hasMarks,
                mayVoid || hasMarks,
                discountRows && layout.has(Field.TICKET),
                isEven(),
                dates.words(orders),
                decimalsWord(decimals));
    }

    private void tellDates(List<DateEvidence.Decision> orders, ProblemLog log) {
        Place column = layout.column(Field.DATE);
        for (DateEvidence.Decision decision : orders) {
            String remedy = "If this is not right, set Dates for this file in the sheet Columns of the book.";
            if (decision.order() == null) {
                log.fault(ProblemKind.VALUE_AMBIGUOUS, column, decision.example(), decision.why(), remedy);
            } else if (!decision.why().isEmpty()) {
                log.notice(ProblemKind.VALUE_AMBIGUOUS, column, decision.example(), decision.why(), remedy);
            }
        }
        if (dates.lacksYears()) {
            log.notice(
                    ProblemKind.VALUE_AMBIGUOUS,
                    column,
                    "",
                    "Dates of this column have no year; each was given the year that brings it nearest to "
                            + context.month() + ".",
                    "Export them with the year if this is not right.");
        }
        if (dates.shapeCount() > 1) {
            log.notice(
                    ProblemKind.VALUE_DOUBTFUL,
                    column,
                    "",
                    "The dates of this column are written in " + dates.shapeCount() + " forms: " + dates.words(orders)
                            + ".",
                    "Each form was read by itself; check the dates of the rows set aside.");
        }
    }

    private @Nullable Decimals[] decimals(Sheet sheet, ProblemLog log) {
        Decimals set = context.decimals(layout.sheet().file());
        Decimals file = provenByFile();
        StyleWitness.Verdict sums = set == null && isOpen() ? witness(sheet, file) : null;
        Decimals fallback = sums != null ? sums.style() : file != null ? file : Decimals.of(context.language());
        String why = sums != null
                ? sums.why()
                : file != null
                        ? "as the file's other columns are written"
                        : "as the bar's language " + context.language().toLanguageTag() + " writes them";
        @Nullable Decimals[] styles = new @Nullable Decimals[Field.SIZE];
        for (Field field : Field.values()) {
            NumberEvidence evidence = numbers[field.at()];
            if (evidence != null) {
                Decimals proven = evidence.proven();
                boolean mixed = set == null && evidence.isContradictory();
                styles[field.at()] = mixed ? null : set != null ? set : proven != null ? proven : fallback;
                if (mixed) {
                    log.fault(
                            ProblemKind.VALUE_AMBIGUOUS,
                            layout.column(field),
                            "",
                            "The numbers of this column are written with decimal points and with decimal commas.",
                            "Set Decimals for this file in the sheet Columns of the book, or export it again.");
                } else if (set == null && proven == null && evidence.open() > 0) {
                    tellOpen(field, evidence, fallback, why, log);
                }
            } else {
                styles[field.at()] = set != null ? set : fallback;
            }
        }
        return styles;
    }

    /** Sums first, then the book's menu prices; then, that no till prints three decimals of money throughout. */
    private StyleWitness.@Nullable Verdict witness(Sheet sheet, @Nullable Decimals file) {
        StyleWitness.Verdict verdict = StyleWitness.find(sheet, layout);
        if (verdict == null && FileKind.find(layout.sheet().file()) == FileKind.SALES) {
            verdict = StyleWitness.byMenu(sheet, layout, new MenuPrices(context));
        }
        boolean cents = context.settings().get(Setting.CURRENCY).getDefaultFractionDigits() == 2;
        if (verdict != null || file != null || !cents) {
            return verdict;
        }
        for (Field money : List.of(Field.GROSS, Field.NET, Field.LINE_TOTAL, Field.UNIT_PRICE)) {
            NumberEvidence evidence = numbers[money.at()];
            Decimals style = evidence == null ? null : evidence.thousands();
            if (style != null) {
                return new StyleWitness.Verdict(
                        style, "as all of its cells have three digits behind the separator, and money has two");
            }
        }
        return null;
    }

    /** Whether any column has numbers that can be read two ways and nothing in it that says which. */
    private boolean isOpen() {
        for (NumberEvidence evidence : numbers) {
            if (evidence != null && evidence.proven() == null && !evidence.isContradictory() && evidence.open() > 0) {
                return true;
            }
        }
        return false;
    }

    private void tellOpen(Field field, NumberEvidence evidence, Decimals taken, String why, ProblemLog log) {
        log.notice(
                ProblemKind.VALUE_AMBIGUOUS,
                layout.column(field),
                evidence.example(),
                "Numbers of this column can be read with a decimal point or a decimal comma; read with a decimal "
                        + taken.word() + ", " + why + ": " + evidence.open() + " such cells add up to "
                        + evidence.openSum(taken).toPlainString() + ", with a decimal "
                        + taken.other().word() + " to "
                        + evidence.openSum(taken.other()).toPlainString() + ".",
                "If this is not right, set Decimals for this file in the sheet Columns of the book.");
    }

    /** The style that the file's columns prove, where they agree. */
    private @Nullable Decimals provenByFile() {
        Decimals proven = null;
        for (NumberEvidence evidence : numbers) {
            Decimals one = evidence == null ? null : evidence.proven();
            if (one != null && proven != null && one != proven) {
                return null;
            }
            proven = one != null ? one : proven;
        }
        return proven;
    }

    private String decimalsWord(@Nullable Decimals[] styles) {
        List<String> words = new ArrayList<>();
        for (Field field : Field.values()) {
            NumberEvidence evidence = numbers[field.at()];
            if (evidence != null && evidence.isStored() && !words.contains("stored")) {
                words.add("stored");
            }
            Decimals style = styles[field.at()];
            String word = style == null ? "mixed" : style.word();
            if (evidence != null && evidence.isWritten() && !words.contains(word)) {
                words.add(word);
            }
        }
        return String.join("; ", words);
    }

    private boolean isTimes(ProblemLog log) {
        if (times == 0 && noTimes > 0) {
            unused(Field.TIME, "None of its cells is a time of day.", log);
        }
        return times > 0;
    }

    private boolean isKinds(ProblemLog log) {
        boolean known = kinds.stream().anyMatch(SaleKinds::isKnown);
        if (!known && !kinds.isEmpty() && FileKind.find(layout.sheet().file()) == FileKind.SALES) {
            unused(Field.KIND, "None of its words is a kind of sale.", log);
        }
        return known;
    }

    private static boolean isVoid(String word) {
        return SaleKinds.find(word) == SaleKind.VOID;
    }

    private boolean isVoids(ProblemLog log) {
        boolean marks = voids.stream()
                .allMatch(word -> RowWords.is("yes", word) || RowWords.is("no", word) || word.equals("-"));
        if (!marks) {
            unused(Field.VOID, "Its cells are no marks of yes and no.", log);
        }
        return marks;
    }

    private void unused(Field field, String reason, ProblemLog log) {
        log.notice(
                ProblemKind.COLUMN_UNKNOWN,
                layout.column(field),
                "",
                reason + " The column is not used.",
                "If it matters, map the right heading in the sheet Columns of the book.");
    }
}
