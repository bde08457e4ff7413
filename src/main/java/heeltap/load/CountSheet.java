package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.record.FileAccount;
import heeltap.record.KnownNames;
import heeltap.record.Loss;
import heeltap.record.NameRule;
import heeltap.record.StockCount;
import heeltap.source.Cell;
import heeltap.source.ProblemKind;
import heeltap.source.Row;
import heeltap.source.Sheet;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Reads a sheet of stock counts or of losses: an item, how much of it, and in what unit. */
final class CountSheet {
    private final Sheet sheet;
    private final Layout layout;
    private final Reading reading;
    private final MonthContext context;
    private final FileKind kind;
    private final RowsOut out;
    private final Fields fields;
    private final SectionDate sections;
    private final Field amount;
    private boolean sectionDate;
    private final Tally tally = new Tally();
    private final PrintedTotals totals;
    private final List<StockCount> counts = new ArrayList<>();
    private final List<Loss> losses = new ArrayList<>();

    CountSheet(Sheet sheet, Layout layout, MonthContext context, FileKind kind, RowsOut out) {
        this.sheet = sheet;
        this.layout = layout;
        this.context = context;
        this.kind = kind;
        this.out = out;
        this.reading = Evidence.read(sheet, layout, context, out.log());
        this.fields = new Fields(layout);
        this.sections = new SectionDate(layout, reading, context.month());
        this.amount = kind == FileKind.LOSSES ? Field.AMOUNT : Field.COUNT;
        this.totals = new PrintedTotals(layout, reading, amount);
    }

    void read() {
        sheet.read(row -> {
            if (row.number() > layout.headingRow() && !row.isBlank()) {
                fields.load(row);
                sectionDate = sections.take(row);
                tally.row();
                take(row);
            }
            return true;
        });
    }

    private void take(Row row) {
        String item = fields.text(Field.ITEM);
        NameRule.Where where = kind == FileKind.LOSSES ? NameRule.Where.LOSSES : NameRule.Where.STOCK;
        KnownNames.Verdict verdict = item.isEmpty() ? null : context.names().ask(where, item, fields.text(Field.CODE));
        boolean known = verdict != null && verdict.answer() != KnownNames.Answer.UNKNOWN;
        if (!known && isNoRecord(row)) {
            tally.fate(Tally.Fate.IGNORED, null, null);
            return;
        }
        Cell cell = fields.find(amount);
        Measured measured = cell == null ? null : measured(cell);
        BigDecimal value = measured == null ? null : measured.value;
        tally.in(value, null);
        totals.add(fields);
        String misfit = reading.misfit(row, layout);
        if (misfit != null) {
            setAside(row, ProblemKind.VALUE_DOUBTFUL, null, misfit, RowsOut.text(row), value, List.of());
        } else if (verdict == null) {
            setAside(
                    row,
                    ProblemKind.VALUE_MISSING,
                    Field.ITEM,
                    "The row names no item.",
                    RowsOut.text(row),
                    value,
                    List.of());
        } else if (verdict.answer() == KnownNames.Answer.IGNORED) {
            tally.fate(Tally.Fate.IGNORED, value, null);
        } else if (measured == null) {
            boolean blank = cell == null;
            setAside(
                    row,
                    blank ? ProblemKind.VALUE_MISSING : ProblemKind.VALUE_INVALID,
                    amount,
                    "The " + amount.word() + (blank ? " is missing." : " cannot be read."),
                    RowsOut.text(row),
                    null,
                    List.of());
        } else if (measured.value.signum() < 0) {
            setAside(
                    row,
                    ProblemKind.COUNT_IMPOSSIBLE,
                    amount,
                    "The " + amount.word() + " is below zero.",
                    RowsOut.text(row),
                    value,
                    List.of());
        } else if (verdict.answer() == KnownNames.Answer.UNKNOWN) {
            setAside(
                    row,
                    ProblemKind.NAME_UNKNOWN,
                    Field.ITEM,
                    "The name is not known.",
                    item,
                    value,
                    verdict.nearest());
        } else if (kind == FileKind.LOSSES) {
            takeLoss(row, item, measured);
        } else {
            counts.add(new StockCount(
                    item,
                    Exact.of(measured.value),
                    measured.unit,
                    fields.text(Field.LOCATION),
                    layout.sheet().withRow(row.number())));
            tally.fate(Tally.Fate.USED, value, null);
        }
    }

    private boolean isNoRecord(Row row) {
        if (layout.isHeading(row) || sectionDate) {
            return true;
        }
        if (totals.isTotal(row, fields, Field.ITEM)) {
            totals.total(row, fields, Field.ITEM);
            return true;
        }
        boolean single = row.cells().size() == 1 && !fields.has(amount);
        if (single) {
            totals.section(row.cells().get(0).text());
        }
        return single;
    }

    /**
     * A number with its unit.
     *
     * @param unit as written, from its own column or behind the number
     */
    private record Measured(BigDecimal value, String unit) {}

    /** {@code 3.4}, or {@code 3.4 bottles} where the unit's own cell is blank. */
    private @Nullable Measured measured(Cell cell) {
        String unit = fields.text(Field.UNIT);
        BigDecimal value = reading.number(cell, amount);
        if (value != null) {
            return new Measured(value, unit);
        }
        String text = TextFold.trim(cell.text());
        int end = text.length();
        while (end > 0 && (Character.isLetter(text.charAt(end - 1)) || text.charAt(end - 1) == ' ')) {
            end--;
        }
        if (end == text.length() || end == 0) {
            return null;
        }
        BigDecimal number = reading.number(Cell.text(cell.column(), text.substring(0, end)), amount);
        String behind = TextFold.trim(text.substring(end));
        boolean agrees = unit.isEmpty() || TextFold.fold(unit).equals(TextFold.fold(behind));
        return number == null || !agrees ? null : new Measured(number, behind);
    }

    private void takeLoss(Row row, String item, Measured measured) {
        Cell cell = fields.find(Field.DATE);
        Reading.Moment moment = cell == null ? sections.present() : reading.moment(cell);
        LocalDate date = moment == null
                ? null
                : moment.businessDay(context.settings().get(heeltap.record.Setting.DAY_STARTS_AT));
        Loss.Reason reason = reason(fields.text(Field.REASON));
        BigDecimal value = measured.value;
        if (cell != null && date == null) {
            setAside(
                    row,
                    ProblemKind.VALUE_INVALID,
                    Field.DATE,
                    "The date cannot be read.",
                    RowsOut.text(row),
                    value,
                    List.of());
        } else if (date != null && !YearMonth.from(date).equals(context.month())) {
            setAside(
                    row,
                    ProblemKind.DATE_OUTSIDE,
                    Field.DATE,
                    "The row belongs to another month than " + context.month() + ".",
                    RowsOut.text(row),
                    value,
                    List.of());
        } else if (reason == null) {
            boolean blank = !fields.has(Field.REASON);
            setAside(
                    row,
                    blank ? ProblemKind.VALUE_MISSING : ProblemKind.VALUE_INVALID,
                    Field.REASON,
                    blank ? "The reason is missing." : "The reason is not known.",
                    RowsOut.text(row),
                    value,
                    List.of());
        } else {
            losses.add(new Loss(
                    date,
                    item,
                    Exact.of(value),
                    measured.unit,
                    reason,
                    layout.sheet().withRow(row.number())));
            tally.fate(Tally.Fate.USED, value, null);
        }
    }

    private static Loss.@Nullable Reason reason(String text) {
        String folded = TextFold.fold(text);
        for (Loss.Reason reason : Loss.Reason.values()) {
            String words = "reason " + reason.name().toLowerCase(Locale.ROOT).replace('_', ' ');
            if (RowWords.isFolded(words, folded)) {
                return reason;
            }
        }
        return null;
    }

    private void setAside(
            Row row,
            ProblemKind problem,
            @Nullable Field field,
            String reason,
            String text,
            @Nullable BigDecimal value,
            List<String> nearest) {
        tally.fate(Tally.Fate.SET_ASIDE, value, null);
        out.setAside(
                field == null ? layout.sheet().withRow(row.number()) : layout.cell(field, row.number()),
                problem,
                reason,
                text,
                value,
                null,
                nearest,
                fields.text(Field.ITEM));
    }

    List<StockCount> counts() {
        return counts;
    }

    List<Loss> losses() {
        return losses;
    }

    FileAccount account() {
        totals.finish(out.log());
        return tally.account(
                sheet.facts(),
                kind.word(),
                layout.headingRow(),
                reading.datesWord(),
                reading.decimalsWord(),
                true,
                false,
                null);
    }
}
