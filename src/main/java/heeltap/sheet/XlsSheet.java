package heeltap.sheet;

import heeltap.sheet.NumberCells.NumberFormat;
import heeltap.source.Cell;
import heeltap.source.Row;
import heeltap.source.Sheet;
import heeltap.source.SheetFacts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFCell;
import org.apache.poi.hssf.usermodel.HSSFCellStyle;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.jspecify.annotations.Nullable;

/** A worksheet of a legacy workbook. Rows without a value are skipped. */
final class XlsSheet implements Sheet {
    private final Path path;
    private final int index;
    private final MergedCells merged;
    private final SheetFacts facts;

    XlsSheet(Path path, int index, MergedCells merged, SheetFacts facts) {
        this.path = path;
        this.index = index;
        this.merged = merged;
        this.facts = facts;
    }

    @Override
    public SheetFacts facts() {
        return facts;
    }

    @Override
    public void read(RowReader reader) {
        try (POIFSFileSystem files = new POIFSFileSystem(path.toFile(), true);
                HSSFWorkbook workbook = new HSSFWorkbook(files)) {
            rows(workbook, reader);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** Reads from a workbook that is open. */
    void rows(HSSFWorkbook workbook, RowReader reader) {
        NumberCells numbers = new NumberCells(workbook.getInternalWorkbook().isUsing1904DateWindowing());
        for (org.apache.poi.ss.usermodel.Row row : workbook.getSheetAt(index)) {
            List<Cell> cells = new ArrayList<>();
            for (org.apache.poi.ss.usermodel.Cell stored : row) {
                Cell cell = merged.covers(row.getRowNum() + 1, stored.getColumnIndex())
                        ? null
                        : make((HSSFCell) stored, numbers);
                if (cell != null && !Blank.is(cell.text())) {
                    cells.add(cell);
                }
            }
            if (!cells.isEmpty() && !reader.take(new Row(row.getRowNum() + 1, cells))) {
                return;
            }
        }
    }

    private static @Nullable Cell make(HSSFCell cell, NumberCells numbers) {
        int column = cell.getColumnIndex();
        CellType type = cell.getCellType() == CellType.FORMULA ? cell.getCachedFormulaResultType() : cell.getCellType();
        return switch (type) {
            case STRING -> Cell.text(column, cell.getRichStringCellValue().getString());
            case BOOLEAN -> Cell.text(column, cell.getBooleanCellValue() ? "TRUE" : "FALSE");
            case ERROR ->
                Cell.text(column, FormulaError.forInt(cell.getErrorCellValue()).getString());
            case NUMERIC -> number(column, cell, numbers);
            default -> null;
        };
    }

    private static Cell number(int column, HSSFCell cell, NumberCells numbers) {
        double stored = cell.getNumericCellValue();
        if (Double.isNaN(stored) || Double.isInfinite(stored)) {
            return Cell.text(column, String.valueOf(stored));
        }
        HSSFCellStyle style = cell.getCellStyle();
        NumberFormat format = new NumberFormat(style.getDataFormat(), style.getDataFormatString());
        return numbers.cell(column, StoredNumber.rounded(BigDecimal.valueOf(stored)), format);
    }
}
