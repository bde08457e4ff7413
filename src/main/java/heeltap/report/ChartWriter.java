package heeltap.report;

import heeltap.document.BarChart;
import heeltap.document.ColumnDigits;
import heeltap.document.Format;
import heeltap.document.LineChart;
import heeltap.document.ScatterChart;
import heeltap.document.ScatterChart.Cut;
import heeltap.document.ScatterChart.Kind;
import heeltap.document.ScatterChart.Point;
import heeltap.document.TableRow.Emphasis;
import heeltap.quantity.Exact;
import heeltap.report.SheetWriter.ChartPlace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Native charts. What they show stands on a sheet of plot data, kind by kind, so that each series is one range; the
 * cells there look the figures up in the tables, so that a chart follows when someone changes a figure.
 */
final class ChartWriter {
    private final WorkbookParts parts;
    private final Map<String, TablePlace> tables;
    private final XSSFSheet sheet;
    private int next = 2;

    ChartWriter(WorkbookParts parts, Map<String, TablePlace> tables, XSSFSheet sheet) {
        this.parts = parts;
        this.tables = tables;
        this.sheet = sheet;
    }

    void write(List<ChartPlace> places) {
        XSSFCell title = sheet.createRow(0).createCell(0);
        title.setCellStyle(parts.styles().title());
        title.setCellValue(sheet.getSheetName());
        sheet.setDisplayGridlines(false);
        sheet.setColumnWidth(0, 52 * 256);
        sheet.setColumnWidth(1, 26 * 256);
        sheet.setColumnWidth(2, 18 * 256);
        sheet.setColumnWidth(3, 18 * 256);
        for (ChartPlace place : places) {
            XSSFClientAnchor anchor = NativeCharts.anchor(place.sheet(), place.row(), place.rows());
            if (place.chart() instanceof ScatterChart chart) {
                scatter(chart, new NativeScatter(parts, place, anchor, chart));
            } else if (place.chart() instanceof LineChart chart) {
                lines(chart, place.sheet(), anchor);
            } else {
                bars((BarChart) place.chart(), place.sheet(), anchor);
            }
        }
    }

    private void scatter(ScatterChart chart, NativeScatter drawing) {
        headings(chart.title(), chart.xTitle(), chart.yTitle());
        List<Kind> kinds = chart.points().stream()
                .map(Point::kind)
                .distinct()
                .sorted(Comparator.comparingInt(Kind::order))
                .toList();
        for (Kind kind : kinds) {
            marks(chart, drawing, kind, true);
            marks(chart, drawing, kind, false);
        }
        double[] x = drawing.xRange();
        double[] y = drawing.yRange();
        for (Cut cut : chart.verticalCuts()) {
            double at = cut.at().toDouble();
            cut(chart, cut, drawing, new double[] {at, at}, y);
        }
        for (Cut cut : chart.horizontalCuts()) {
            double at = cut.at().toDouble();
            cut(chart, cut, drawing, x, new double[] {at, at});
        }
        drawing.finish();
        next++;
    }

    private void marks(ScatterChart chart, NativeScatter drawing, Kind kind, boolean certain) {
        List<Point> points = chart.points().stream()
                .filter(point -> point.kind().equals(kind) && point.certain() == certain)
                .toList();
        if (points.isEmpty()) {
            return;
        }
        String name = certain ? kind.word() : parts.words().get("notCertain", kind.word());
        int from = next;
        points.forEach(point -> point(chart, point, name));
        drawing.marks(name, kind, certain, points, range(0, from), range(2, from), range(3, from));
    }

    private void cut(ScatterChart chart, Cut cut, NativeScatter drawing, double[] x, double[] y) {
        int from = next;
        for (int i = 0; i < 2; i++) {
            XSSFRow row = sheet.createRow(next++);
            text(row, 0, cut.name());
            text(row, 1, "");
            XSSFCell across = number(row, 2, x[i], chart.xFormat());
            XSSFCell up = number(row, 3, y[i], chart.yFormat());
            follow(x[0] == x[1] ? across : up, cut);
        }
        drawing.cut(cut.name(), x, y, range(2, from), range(3, from));
    }

    /** A cut that follows what a reader types. */
    private void follow(XSSFCell cell, Cut cut) {
        ColumnPlace place = cut.column().isEmpty() ? null : ColumnPlace.find(tables, cut.column());
        if (place != null) {
            cell.setCellFormula("INDEX(" + place.range() + "," + (cut.row() + 1) + ")");
            cell.setCellValue(cut.at().toDouble());
        }
    }

    private void point(ScatterChart chart, Point point, String kind) {
        XSSFRow row = sheet.createRow(next++);
        text(row, 0, point.label());
        text(row, 1, kind);
        look(number(row, 2, point.x().toDouble(), chart.xFormat()), chart.xColumn(), point.x(), chart, point);
        look(number(row, 3, point.y().toDouble(), chart.yFormat()), chart.yColumn(), point.y(), chart, point);
    }

    /** Looks the figure up by the point's name, which goes on working when the table is sorted. */
    private void look(XSSFCell cell, String column, Exact value, ScatterChart chart, Point point) {
        String name = point.label();
        if (name.contains("*") || name.contains("?") || name.contains("~") || name.length() > 255) {
            return;
        }
        ColumnPlace values = ColumnPlace.find(tables, column);
        ColumnPlace labels = ColumnPlace.find(tables, chart.labelColumn());
        if (values != null && labels != null && values.holds(labels, name, value)) {
            cell.setCellFormula("INDEX(" + values.range() + ",MATCH($A$" + (cell.getRowIndex() + 1) + ","
                    + labels.range() + ",0))");
            cell.setCellValue(value.toDouble());
        }
    }

    private void bars(BarChart chart, XSSFSheet on, XSSFClientAnchor anchor) {
        headings(chart.title(), chart.valueTitle(), "");
        int from = next;
        List<String> labels = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (BarChart.Bar bar : chart.bars()) {
            XSSFRow row = sheet.createRow(next++);
            text(row, 0, bar.label());
            text(row, 1, "");
            number(row, 2, bar.value().toDouble(), chart.format());
            labels.add(bar.label());
            values.add(bar.value().toDouble());
        }
        if (!labels.isEmpty()) {
            NativeBars.draw(parts, on, anchor, chart, labels, values, range(0, from), range(2, from));
        }
        next++;
    }

    private void lines(LineChart chart, XSSFSheet on, XSSFClientAnchor anchor) {
        headings(chart.title(), chart.valueTitle(), "");
        List<String> ranges = new ArrayList<>();
        for (LineChart.Line line : chart.lines()) {
            int from = next;
            for (int i = 0; i < chart.labels().size(); i++) {
                XSSFRow row = sheet.createRow(next++);
                text(row, 0, chart.labels().get(i));
                text(row, 1, line.name());
                line.values().get(i).ifPresent(value -> number(row, 2, value.toDouble(), chart.format()));
            }
            ranges.add(range(0, from));
            ranges.add(range(2, from));
        }
        NativeLines.draw(parts, on, anchor, chart, ranges);
        next++;
    }

    private void headings(String title, String third, String fourth) {
        XSSFCell name = sheet.createRow(next++).createCell(0);
        name.setCellStyle(parts.styles().subtitle());
        name.setCellValue(title);
        XSSFRow row = sheet.createRow(next++);
        List<String> words = List.of(
                parts.words().get("name"), fourth.isEmpty() ? "" : parts.words().get("kind"), third, fourth);
        for (int c = 0; c < words.size(); c++) {
            XSSFCell cell = row.createCell(c);
            cell.setCellStyle(parts.styles().heading(c > 1));
            cell.setCellValue(words.get(c));
        }
        int lines = Math.max(parts.lines(third, 16), parts.lines(fourth, 16));
        row.setHeightInPoints(lines * 12.5f + 5);
    }

    private void text(XSSFRow row, int column, String text) {
        XSSFCell cell = row.createCell(column);
        boolean quoted = SheetRows.startsLikeFormula(text);
        cell.setCellStyle(parts.styles().body("", false, Emphasis.PLAIN, false, quoted, false));
        cell.setCellValue(text);
    }

    private XSSFCell number(XSSFRow row, int column, double value, Format format) {
        XSSFCell cell = row.createCell(column);
        String pattern = parts.styles().pattern(format, ColumnDigits.MOST);
        cell.setCellStyle(parts.styles().body(pattern, true, Emphasis.PLAIN, false, false, false));
        cell.setCellValue(value);
        return cell;
    }

    private String range(int column, int from) {
        return new CellRangeAddress(from, next - 1, column, column).formatAsString(sheet.getSheetName(), true);
    }
}
