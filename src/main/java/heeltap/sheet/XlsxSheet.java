package heeltap.sheet;

import heeltap.source.Cell;
import heeltap.source.Row;
import heeltap.source.Sheet;
import heeltap.source.SheetFacts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.xml.sax.SAXException;

/** A worksheet of an XML workbook, streamed anew each time. Rows without a value are skipped. */
final class XlsxSheet implements Sheet {
    private final XlsxFile file;
    private final String relation;
    private final MergedCells merged;
    private final SheetFacts facts;

    XlsxSheet(XlsxFile file, String relation, MergedCells merged, SheetFacts facts) {
        this.file = file;
        this.relation = relation;
        this.merged = merged;
        this.facts = facts;
    }

    @Override
    public SheetFacts facts() {
        return facts;
    }

    @Override
    public void read(RowReader reader) {
        try {
            file.read(relation, (shared, styles, numbers) -> new Reading(reader, shared, styles, numbers));
        } catch (Stop enough) {
            // the reader has what it wanted
        } catch (SAXException damage) {
            throw new UncheckedIOException(new IOException(damage));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** What a formula without a result shows. */
    static String formulaText(@Nullable String formula) {
        return formula == null || formula.isEmpty() ? "=(formula)" : "=" + formula;
    }

    /** Ends a parse early. */
    private static final class Stop extends SAXException {
        Stop() {
            super("enough");
        }
    }

    private final class Reading extends XlsxCellEvents {
        private final RowReader reader;
        private final List<String> shared;
        private final XlsxStyles styles;
        private final NumberCells numbers;
        private int number;
        private List<Cell> cells = new ArrayList<>();

        Reading(RowReader reader, List<String> shared, XlsxStyles styles, NumberCells numbers) {
            this.reader = reader;
            this.shared = shared;
            this.styles = styles;
            this.numbers = numbers;
        }

        @Override
        void rowStarts(int row, boolean hidden) {
            number = row;
        }

        @Override
        void cell(RawCell raw) {
            Cell cell = merged.covers(raw.row(), raw.column()) ? null : make(raw);
            if (cell != null && !Blank.is(cell.text())) {
                cells.add(cell);
            }
        }

        @Override
        void rowEnds() throws SAXException {
            if (cells.isEmpty()) {
                return;
            }
            Row row = new Row(number, cells);
            cells = new ArrayList<>(cells.size());
            if (!reader.take(row)) {
                throw new Stop();
            }
        }

        private @Nullable Cell make(RawCell raw) {
            if (raw.isUncalculated()) {
                return Cell.text(raw.column(), formulaText(raw.formula()));
            }
            String value = raw.value();
            if (value == null) {
                return null;
            }
            return switch (raw.type()) {
                case "s" -> sharedCell(raw.column(), value);
                case "str", "inlineStr" -> Cell.text(raw.column(), EscapedText.decode(value));
                case "b" -> Cell.text(raw.column(), XlsxWorkbook.isTrue(value) ? "TRUE" : "FALSE");
                case "e" -> Cell.text(raw.column(), value);
                case "d" -> new Cell(raw.column(), value, null, isoMoment(value));
                default -> numberCell(raw, value);
            };
        }

        private Cell sharedCell(int column, String value) {
            BigDecimal number = StoredNumber.parse(value);
            int index = number == null ? -1 : number.intValue();
            return Cell.text(column, index >= 0 && index < shared.size() ? shared.get(index) : "#REF!");
        }

        private Cell numberCell(RawCell raw, String value) {
            BigDecimal stored = StoredNumber.parse(value);
            return stored == null
                    ? Cell.text(raw.column(), value)
                    : numbers.cell(raw.column(), stored, styles.format(raw.style()));
        }
    }

    private static @Nullable LocalDateTime isoMoment(String value) {
        try {
            String text = value.endsWith("Z") ? value.substring(0, value.length() - 1) : value;
            return text.indexOf('T') < 0 ? LocalDate.parse(text).atStartOfDay() : LocalDateTime.parse(text);
        } catch (DateTimeParseException notADate) {
            return null;
        }
    }
}
