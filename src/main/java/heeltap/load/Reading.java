package heeltap.load;

import heeltap.record.SaleKind;
import heeltap.source.Cell;
import heeltap.source.Row;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How the cells of one sheet are read, decided once from all of its rows. */
final class Reading {
    private final @Nullable Decimals[] decimals;
    private final Map<DateText.Shape, DateEvidence.Decision> dates = new EnumMap<>(DateText.Shape.class);
    private final YearMonth month;
    private final boolean since1904;
    private final boolean clock;
    private final boolean timeColumn;
    private final boolean kindColumn;
    private final boolean voidColumn;
    private final boolean voids;
    private final boolean discountRows;
    private final boolean even;
    private final Map<String, Optional<SaleKind>> kinds = new HashMap<>();
    private final String datesWord;
    private final String decimalsWord;

    /**
     * @param decimals by field; null where a column mixes both styles
     * @param dates of each shape that is not decided by itself
     * @param month dates without a year are of the year that brings them nearest to it
     * @param since1904 whether numbers that are dates count from 1904
     * @param clock whether the dates have times of day
     * @param timeColumn whether the time column holds times; so too kinds and marks of void
     * @param voids whether any row may be a void
     * @param discountRows whether any row may be a discount on a ticket
     * @param even whether rows are as wide as the heading, but for few
     */
    Reading(
            @Nullable Decimals[] decimals,
            List<DateEvidence.Decision> dates,
            YearMonth month,
            boolean since1904,
            boolean clock,
            boolean timeColumn,
            boolean kindColumn,
            boolean voidColumn,
            boolean voids,
            boolean discountRows,
            boolean even,
            String datesWord,
            String decimalsWord) {
        this.decimals = decimals;
        dates.forEach(decision -> this.dates.put(decision.shape(), decision));
        this.month = month;
        this.since1904 = since1904;
        this.clock = clock;
        this.timeColumn = timeColumn;
        this.kindColumn = kindColumn;
        this.voidColumn = voidColumn;
        this.voids = voids;
        this.discountRows = discountRows;
        this.even = even;
        this.datesWord = datesWord;
        this.decimalsWord = decimalsWord;
    }

    String datesWord() {
        return datesWord;
    }

    String decimalsWord() {
        return decimalsWord;
    }

    boolean hasTime() {
        return clock || timeColumn;
    }

    boolean hasTimeColumn() {
        return timeColumn;
    }

    boolean hasKinds() {
        return kindColumn;
    }

    boolean hasVoidMarks() {
        return voidColumn;
    }

    /** Whether any row may be a void. */
    boolean hasVoids() {
        return voids;
    }

    /** Whether any row may be a discount on a whole ticket. */
    boolean hasDiscountRows() {
        return discountRows;
    }

    /** Why the cells of a row may not stand under their headings; null where nothing speaks for it. */
    @Nullable String misfit(Row row, Layout layout) {
        if (layout.width() == 0 || row.width() == layout.width()) {
            return null;
        }
        if (row.width() > layout.width()) {
            boolean beyond = row.cells().get(row.cells().size() - 1).column() >= layout.width();
            return beyond
                    ? "The row has more cells than the heading, so that they may stand under wrong headings."
                    : null;
        }
        return even && row.width() > 0
                ? "The row has fewer cells than the heading, so that they may stand under wrong headings."
                : null;
    }

    /** The kind of sale that a word of the kind column means; null for none. */
    @Nullable SaleKind kind(String word) {
        Optional<SaleKind> kind = kinds.get(word);
        if (kind == null) {
            kind = Optional.ofNullable(SaleKinds.find(word));
            kinds.put(word, kind);
        }
        return kind.orElse(null);
    }

    /** How a field's numbers are written; null where its column mixes both styles. */
    @Nullable Decimals style(Field field) {
        return decimals[field.at()];
    }

    /** The number of a field; null where the cell is blank or cannot be read. */
    @Nullable BigDecimal number(Fields fields, Field field) {
        Cell cell = fields.find(field);
        return cell == null ? null : number(cell, field);
    }

    @Nullable BigDecimal number(Cell cell, Field field) {
        if (cell.number() != null) {
            return cell.number();
        }
        Decimals style = decimals[field.at()];
        if (style != null) {
            return NumberText.parse(cell.text(), style);
        }
        return NumberText.readings(cell.text()) == NumberText.Readings.SAME
                ? NumberText.parse(cell.text(), Decimals.POINT)
                : null;
    }

    /** The number of a cell in percent, its sign of percent written or not; null where there is none. */
    @Nullable BigDecimal percent(Cell cell, Field field) {
        Decimals style = decimals[field.at()];
        BigDecimal marked = style == null ? null : NumberText.parsePercent(cell.text(), style);
        if (marked != null || cell.number() == null) {
            return marked != null ? marked : number(cell, field);
        }
        // a spreadsheet stores 20 % as 0.2
        boolean fraction = cell.text().contains("%");
        return fraction ? cell.number().movePointRight(2) : cell.number();
    }

    /**
     * The date of a cell with its time of day; the time is null where the column has none or the cell has none.
     *
     * @return null where the cell is no date under the column's order
     */
    @Nullable Moment moment(Cell cell) {
        LocalDateTime stored = cell.moment() != null ? cell.moment() : null;
        if (stored == null) {
            DateText text = DateText.parse(cell.text(), month);
            if (text != null) {
                LocalDate date = date(text);
                return date == null ? null : new Moment(date, clock ? text.time() : null);
            }
            stored = SerialDate.parse(cell, since1904);
        }
        return stored == null ? null : new Moment(stored.toLocalDate(), clock ? stored.toLocalTime() : null);
    }

    private @Nullable LocalDate date(DateText text) {
        if (text.shape().isDecided()) {
            return text.date(DateOrder.YEAR_MONTH_DAY);
        }
        DateEvidence.Decision decision = dates.get(text.shape());
        DateOrder order = decision == null ? null : decision.order();
        return order != null ? text.date(order) : onlyReading(text);
    }

    private static @Nullable LocalDate onlyReading(DateText text) {
        LocalDate only = null;
        for (DateOrder order : DateOrder.values()) {
            LocalDate date = text.date(order);
            if (date != null && only != null && !date.equals(only)) {
                return null;
            }
            only = date != null ? date : only;
        }
        return only;
    }

    /** The time of a cell of the time column; null where it is none. */
    static @Nullable LocalTime time(Cell cell) {
        if (cell.moment() != null) {
            return cell.moment().toLocalTime();
        }
        LocalTime time = cell.number() != null ? SerialDate.parseTime(cell) : TimeText.parse(cell.text());
        if (time == null && cell.number() == null) {
            DateText both = DateText.parse(cell.text());
            return both == null ? null : both.time();
        }
        return time;
    }

    /**
     * A date, perhaps with a time of day.
     *
     * @param time null where none is written
     */
    record Moment(LocalDate date, @Nullable LocalTime time) {
        /** The day it belongs to: hours before the day's start belong to the day before. */
        LocalDate businessDay(LocalTime start) {
            return time != null && time.isBefore(start) ? date.minusDays(1) : date;
        }
    }
}
