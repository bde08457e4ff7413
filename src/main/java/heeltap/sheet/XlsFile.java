package heeltap.sheet;

import heeltap.source.Place;
import heeltap.source.Sheet;
import heeltap.source.SheetFacts;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.OldExcelFormatException;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;

/** A legacy workbook (BIFF8). It is small by its format, so a reading holds it whole and lets it go. */
final class XlsFile {
    private static final String PASSWORD = "The workbook is protected by a password.";
    private static final String REMOVE_PASSWORD =
            "Open it in a spreadsheet program and save a copy without a password.";

    private XlsFile() {}

    static List<Sheet> open(Path path, String name) throws UnreadableFile, IOException {
        try (POIFSFileSystem files = new POIFSFileSystem(path.toFile(), true)) {
            refuseOtherContents(files.getRoot());
            try (HSSFWorkbook workbook = new HSSFWorkbook(files)) {
                List<Sheet> sheets = new ArrayList<>();
                for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
                    sheets.add(sheet(path, workbook, i, name));
                }
                return sheets;
            }
        } catch (EncryptedDocumentException protection) {
            throw new UnreadableFile(PASSWORD, REMOVE_PASSWORD);
        } catch (OldExcelFormatException old) {
            throw new UnreadableFile(
                    "The workbook was saved by a version of Excel from before 1997.",
                    "Open it in a spreadsheet program and save it as .xlsx.");
        } catch (IOException | RuntimeException damage) {
            // the library reports damage by exceptions of many kinds
            throw new UnreadableFile(
                    "The workbook is damaged or cut off.",
                    "Copy or download the file again, or open it in a spreadsheet program and save it as .xlsx.");
        }
    }

    private static void refuseOtherContents(DirectoryNode root) throws UnreadableFile {
        if (root.hasEntryCaseInsensitive("EncryptedPackage")) {
            throw new UnreadableFile(PASSWORD, REMOVE_PASSWORD);
        }
        if (root.hasEntryCaseInsensitive("WordDocument") || root.hasEntryCaseInsensitive("PowerPoint Document")) {
            throw new UnreadableFile(
                    "The file is an office document but no workbook.", "Save its table as .xlsx or CSV.");
        }
    }

    private static Sheet sheet(Path path, HSSFWorkbook workbook, int index, String name) {
        HSSFSheet sheet = workbook.getSheetAt(index);
        Place place = Place.of(name, workbook.getSheetName(index));
        OddPlaces odd = new OddPlaces(place);
        MergedCells merged = new MergedCells();
        for (CellRangeAddress range : sheet.getMergedRegions()) {
            merged.add(range.getFirstRow() + 1, range.getFirstColumn(), range.getLastRow() + 1, range.getLastColumn());
        }
        int hidden = 0;
        int first = 0;
        SortedSet<Integer> hiddenColumns = new TreeSet<>();
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() != CellType.BLANK && sheet.isColumnHidden(cell.getColumnIndex())) {
                    hiddenColumns.add(cell.getColumnIndex());
                }
            }
            if (row.getZeroHeight() && row.getPhysicalNumberOfCells() > 0) {
                first = hidden++ == 0 ? row.getRowNum() + 1 : first;
            }
        }
        if (hidden > 0) {
            odd.addHiddenRows(first, hidden);
        }
        odd.addHiddenColumns(hiddenColumns);
        boolean unseen = workbook.isSheetHidden(index) || workbook.isSheetVeryHidden(index);
        SheetFacts bare = new SheetFacts(place, "", "", unseen, List.of());
        new XlsSheet(path, index, new MergedCells(), bare).rows(workbook, merged.namingCovered(odd));
        boolean since1904 = workbook.getInternalWorkbook().isUsing1904DateWindowing();
        SheetFacts facts = new SheetFacts(place, "", "", unseen, since1904, odd.problems());
        return new XlsSheet(path, index, merged, facts);
    }
}
