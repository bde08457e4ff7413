package heeltap.report;

import heeltap.document.Column;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.ComparisonOperator;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.SheetConditionalFormatting;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** The rules of a table's cells that change when someone types. */
final class LiveCells {
    private final WorkbookParts parts;
    private final XSSFSheet sheet;
    private final TablePlace place;

    LiveCells(WorkbookParts parts, XSSFSheet sheet, TablePlace place) {
        this.parts = parts;
        this.sheet = sheet;
        this.place = place;
    }

    void setUp() {
        validate();
        colourNegatives();
    }

    /** Live figures that fall below zero take the accent colour; the minus sign says the same without it. */
    private void colourNegatives() {
        List<CellRangeAddress> live = new ArrayList<>();
        for (int c = 0; c < place.table().columns().size() && !place.isEmpty(); c++) {
            Column column = place.table().columns().get(c);
            if (!column.formula().isEmpty() && column.format().isNumeric()) {
                live.add(new CellRangeAddress(place.firstRow(), place.lastRow(), c, c));
            }
        }
        if (!live.isEmpty()) {
            SheetConditionalFormatting formats = sheet.getSheetConditionalFormatting();
            ConditionalFormattingRule below = formats.createConditionalFormattingRule(ComparisonOperator.LT, "0");
            below.createFontFormatting().setFontColor(WorkbookStyles.color(Look.ACCENT));
            formats.addConditionalFormatting(live.toArray(CellRangeAddress[]::new), below);
        }
    }

    /** Where the reader types, only numbers that make sense are taken. */
    private void validate() {
        DataValidationHelper helper = sheet.getDataValidationHelper();
        for (int c = 0; c < place.table().columns().size() && !place.isEmpty(); c++) {
            Column column = place.table().columns().get(c);
            if (column.input() != Column.Input.NONE) {
                boolean fromZero = column.input() == Column.Input.FROM_ZERO;
                DataValidation validation = helper.createValidation(
                        helper.createDecimalConstraint(
                                fromZero ? OperatorType.GREATER_OR_EQUAL : OperatorType.LESS_THAN, "0", ""),
                        new CellRangeAddressList(place.firstRow(), place.lastRow(), c, c));
                validation.setShowErrorBox(true);
                validation.createErrorBox(
                        column.heading(), parts.words().get(fromZero ? "typeNumber" : "typeBelowZero"));
                sheet.addValidationData(validation);
            }
        }
    }
}
