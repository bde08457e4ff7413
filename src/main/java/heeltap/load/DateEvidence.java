package heeltap.load;

import heeltap.source.Cell;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a column of dates says about the order of day and month, all of its cells together. */
final class DateEvidence {
    /** Up to one cell in so many may contradict the others and is then unreadable. */
    private static final int FEW = 20;

    private final YearMonth month;
    private final boolean since1904;
    private final Map<DateText.Shape, ShapeCount> shapes = new EnumMap<>(DateText.Shape.class);
    private long stored;
    private long serial;
    private boolean clock;

    DateEvidence(YearMonth month, boolean since1904) {
        this.month = month;
        this.since1904 = since1904;
    }

    void see(Cell cell) {
        if (cell.moment() != null) {
            stored++;
            clock |= !cell.moment().toLocalTime().equals(LocalTime.MIDNIGHT);
            return;
        }
        DateText text = DateText.parse(cell.text(), month);
        LocalDateTime numbered = text == null ? SerialDate.parse(cell, since1904) : null;
        if (text != null) {
            clock |= text.time() != null && !text.time().equals(LocalTime.MIDNIGHT);
            shapes.computeIfAbsent(text.shape(), s -> new ShapeCount()).see(text, cell.text(), month);
        } else if (numbered != null) {
            serial++;
            clock |= !numbered.toLocalTime().equals(LocalTime.MIDNIGHT);
        }
    }

    /** Whether any date has a time of day; midnight everywhere is no time. */
    boolean hasClock() {
        return clock;
    }

    /**
     * How the dates of one shape are read.
     *
     * @param order null where the cells contradict each other: then only those are read that allow one reading
     * @param why what the reader should know; empty for nothing
     */
    record Decision(DateText.Shape shape, @Nullable DateOrder order, String example, String why) {}

    /** @param set the order that Columns sets; null for none */
    List<Decision> decide(@Nullable DateOrder set, DateOrder language) {
        List<Decision> decisions = new ArrayList<>();
        shapes.forEach((shape, count) -> {
            if (!shape.isDecided()) {
                decisions.add(set != null ? new Decision(shape, set, "", "") : count.decide(shape, language, month));
            }
        });
        return decisions;
    }

    /** {@code day-month}, {@code stored}, several joined by {@code ; }. */
    String words(List<Decision> decisions) {
        List<String> words = new ArrayList<>();
        if (stored + serial > 0) {
            words.add("stored");
        }
        if (shapes.containsKey(DateText.Shape.YEAR_FIRST)) {
            words.add(DateOrder.YEAR_MONTH_DAY.word());
        }
        if (shapes.keySet().stream().anyMatch(DateText.Shape::isWords)) {
            words.add("month in words");
        }
        for (Decision decision : decisions) {
            String word = decision.order() == null ? "mixed" : decision.order().word();
            if (!words.contains(word)) {
                words.add(word);
            }
        }
        return String.join("; ", words);
    }

    /** Whether any date has no year. */
    boolean lacksYears() {
        return shapes.keySet().stream().anyMatch(DateText.Shape::isWithoutYear);
    }

    /** How many shapes stand in the column. */
    int shapeCount() {
        return shapes.size() + (stored > 0 ? 1 : 0) + (serial > 0 ? 1 : 0);
    }

    /** Cells of one shape. */
    private static final class ShapeCount {
        private final long[] valid = new long[DateOrder.values().length];
        private final long[] inMonth = new long[DateOrder.values().length];
        private long total;
        private long differing;
        private String example = "";

        void see(DateText text, String written, YearMonth month) {
            total++;
            LocalDate one = null;
            boolean differs = false;
            for (DateOrder order : DateOrder.values()) {
                LocalDate date = text.date(order);
                if (date != null) {
                    valid[order.at()]++;
                    inMonth[order.at()] += belongs(date, month) ? 1 : 0;
                    differs |= one != null && !date.equals(one);
                    one = date;
                }
            }
            if (differs && differing++ == 0) {
                example = TextFold.trim(written);
            }
        }

        /** The first day of the next month may be the night of the last. */
        private static boolean belongs(LocalDate date, YearMonth month) {
            return YearMonth.from(date).equals(month)
                    || date.equals(month.plusMonths(1).atDay(1));
        }

        Decision decide(DateText.Shape shape, DateOrder language, YearMonth month) {
            List<DateOrder> possible = new ArrayList<>();
            for (DateOrder order : DateOrder.values()) {
                if (valid[order.at()] == total) {
                    possible.add(order);
                }
            }
            dropYearFirst(possible);
            if (possible.size() == 1) {
                return new Decision(shape, possible.get(0), example, "");
            }
            if (possible.isEmpty()) {
                return contradictory(shape);
            }
            return differing == 0
                    ? new Decision(shape, possible.get(0), example, "")
                    : open(shape, possible, language, month);
        }

        /** 03.10.26 is not taken for a day of 2003 where another order puts all dates into the month. */
        private void dropYearFirst(List<DateOrder> possible) {
            boolean other = possible.stream().anyMatch(order -> inMonth[order.at()] == total);
            if (other && inMonth[DateOrder.YEAR_MONTH_DAY.at()] == 0) {
                possible.remove(DateOrder.YEAR_MONTH_DAY);
            }
        }

        private Decision contradictory(DateText.Shape shape) {
            DateOrder best = DateOrder.DAY_MONTH;
            for (DateOrder order : DateOrder.values()) {
                best = valid[order.at()] > valid[best.at()] ? order : best;
            }
            long wrong = total - valid[best.at()];
            return wrong * FEW < total
                    ? new Decision(shape, best, example, "")
                    : new Decision(
                            shape,
                            null,
                            example,
                            "The dates of this column are written in two orders; only those that allow one reading are used.");
        }

        private Decision open(DateText.Shape shape, List<DateOrder> possible, DateOrder language, YearMonth month) {
            DateOrder best = possible.contains(language) ? language : possible.get(0);
            DateOrder fallback = best;
            for (DateOrder order : possible) {
                best = inMonth[order.at()] > inMonth[best.at()] ? order : best;
            }
            long most = inMonth[best.at()];
            boolean decided =
                    possible.stream().filter(o -> inMonth[o.at()] == most).count() == 1;
            DateOrder taken = decided ? best : fallback;
            StringBuilder why = new StringBuilder(
                            "The dates of this column can be read in more than one order; read as ")
                    .append(taken.word())
                    .append(decided ? ", which puts " : ", as the bar's language writes them, which puts ")
                    .append(inMonth[taken.at()])
                    .append(" of ")
                    .append(total)
                    .append(" in ")
                    .append(month);
            for (DateOrder order : possible) {
                if (order != taken) {
                    why.append("; ").append(order.word()).append(" would put ").append(inMonth[order.at()]);
                }
            }
            return new Decision(shape, taken, example, why.append(" there.").toString());
        }
    }
}
