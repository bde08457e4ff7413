package heeltap.report;

import heeltap.document.Card;
import heeltap.document.Card.Line;
import heeltap.document.Card.Measured;
import heeltap.document.TableRow.Emphasis;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint.OperatorType;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;

/** A card as rows of a sheet: amounts are numbers, and follow what the reader types as his own batch. */
final class CardRows {
    private final WorkbookParts parts;
    private final SheetRows rows;

    CardRows(WorkbookParts parts, SheetRows rows) {
        this.parts = parts;
        this.rows = rows;
    }

    void write(Card card) {
        rows.skip();
        rows.text(parts.styles().subtitle(), card.title());
        if (!card.summary().isEmpty()) {
            rows.wrapped(parts.styles().note(), card.summary());
        }
        boolean scales = !card.own().isEmpty() && card.whole().isPresent();
        headings(card, scales);
        int wholeRow = rows.next();
        card.whole().ifPresent(whole -> whole(whole, scales, card.own()));
        for (Line line : card.lines()) {
            line(line, Emphasis.PLAIN);
            if (scales) {
                own(line.amounts().get(0), wholeRow, line.amounts().size() + 1);
            }
        }
        if (!card.facts().isEmpty()) {
            rows.wrapped(
                    parts.styles().text(),
                    card.facts().stream()
                            .map(fact -> fact.name() + " " + fact.value())
                            .collect(Collectors.joining(" \u00B7 ")));
        }
        for (int i = 0; i < card.steps().size(); i++) {
            rows.wrapped(parts.styles().text(), (i + 1) + "  " + card.steps().get(i));
        }
        card.cautions().forEach(caution -> rows.wrapped(parts.styles().caution(), caution));
    }

    private void headings(Card card, boolean scales) {
        boolean none = card.headings().stream().allMatch(String::isEmpty);
        if (none) {
            return;
        }
        int row = rows.startRow();
        rows.cell(row, 0, parts.styles().heading(false));
        for (int c = 0; c < card.headings().size(); c++) {
            rows.cell(row, c + 1, parts.styles().heading(true))
                    .setCellValue(card.headings().get(c));
            rows.widen(c + 1, 16);
        }
        if (scales) {
            int last = card.headings().size() + 1;
            rows.cell(row, last, parts.styles().heading(true)).setCellValue(card.own());
            rows.widen(last, 16);
        }
    }

    /** What the batch makes; beside it the cell in which the reader types, with the usual batch in it. */
    private void whole(Line whole, boolean scales, String heading) {
        line(whole, Emphasis.MARKED);
        Optional<Measured> usual = whole.amounts().get(0);
        if (!scales || usual.isEmpty()) {
            return;
        }
        int row = rows.next() - 1;
        int column = whole.amounts().size() + 1;
        XSSFCell cell = rows.cell(row, column, parts.styles().input(pattern(usual.get())));
        cell.setCellValue(usual.get().amount().toDouble());
        DataValidationHelper helper = cell.getSheet().getDataValidationHelper();
        DataValidation validation = helper.createValidation(
                helper.createDecimalConstraint(OperatorType.GREATER_OR_EQUAL, "0", ""),
                new CellRangeAddressList(row, row, column, column));
        validation.setShowErrorBox(true);
        validation.createErrorBox(heading, parts.words().get("typeNumber"));
        cell.getSheet().addValidationData(validation);
    }

    private void line(Line line, Emphasis emphasis) {
        int row = rows.startRow();
        String name = line.note().isEmpty() ? line.name() : line.name() + " \u2013 " + line.note();
        rows.cell(row, 0, parts.styles().body("", false, emphasis, false, SheetRows.startsLikeFormula(name), true))
                .setCellValue(name);
        rows.widen(0, 44);
        List<Optional<Measured>> amounts = line.amounts();
        for (int c = 0; c < amounts.size(); c++) {
            String pattern = amounts.get(c).map(CardRows::pattern).orElse("");
            XSSFCell cell = rows.cell(row, c + 1, parts.styles().body(pattern, true, emphasis, false, false, true));
            amounts.get(c).ifPresent(amount -> cell.setCellValue(amount.amount().toDouble()));
            rows.widen(c + 1, 16);
        }
        rows.fit(row, name, 42);
    }

    /** usual × own batch ÷ usual batch. */
    private void own(Optional<Measured> usual, int wholeRow, int column) {
        if (usual.isEmpty()) {
            return;
        }
        int row = rows.next() - 1;
        XSSFCell cell = rows.cell(
                row, column, parts.styles().body(pattern(usual.get()), true, Emphasis.PLAIN, false, false, false));
        String own = new CellReference(wholeRow, column, true, true).formatAsString();
        String batch = new CellReference(wholeRow, 1, true, true).formatAsString();
        String amount = new CellReference(row, 1).formatAsString();
        cell.setCellFormula(amount + "*" + own + "/" + batch);
        cell.setCellValue(usual.get().amount().toDouble());
    }

    private static String pattern(Measured measured) {
        StringBuilder digits = new StringBuilder("#,##0");
        if (measured.decimals() > 0) {
            digits.append('.');
            for (int i = 0; i < measured.decimals(); i++) {
                digits.append(i < measured.least() ? '0' : '#');
            }
        }
        return measured.unit().isEmpty() ? digits.toString() : digits + "\" " + measured.unit() + "\"";
    }
}
