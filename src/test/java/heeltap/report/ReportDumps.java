package heeltap.report;

import heeltap.document.BarChart;
import heeltap.document.Block;
import heeltap.document.CellValue;
import heeltap.document.Document;
import heeltap.document.Finding;
import heeltap.document.LineChart;
import heeltap.document.ScatterChart;
import heeltap.document.Section;
import heeltap.document.Table;
import heeltap.document.WorkbookSheet;
import heeltap.quantity.Exact;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.NullMarked;

/** Reports as plain text, to be compared with what stands in a golden folder. */
@NullMarked
public final class ReportDumps {
    private ReportDumps() {}

    /** The neutral report: its sections in order, then the sheets and what each holds. */
    public static String document(Document document) {
        StringBuilder text = new StringBuilder();
        text.append(document.bar()).append(" | ").append(document.title()).append('\n');
        for (Section section : document.sections()) {
            text.append("\n# ").append(section.id()).append(": ").append(section.title());
            text.append(section.newPage() ? " (opens a part)\n" : "\n");
            section.blocks().forEach(block -> block(block, text));
        }
        for (WorkbookSheet sheet : document.sheets()) {
            text.append("\n= ").append(sheet.name()).append('\n');
            for (Block block : sheet.blocks()) {
                text.append("  ").append(block.getClass().getSimpleName());
                text.append(
                        block instanceof Block.TableView view
                                ? " " + view.table().name()
                                : "");
                text.append('\n');
            }
        }
        return text.toString();
    }

    private static void block(Block block, StringBuilder text) {
        if (block instanceof Block.Paragraph paragraph) {
            text.append(paragraph.text()).append('\n');
        } else if (block instanceof Block.Heading heading) {
            text.append("## ").append(heading.text()).append('\n');
        } else if (block instanceof Block.Caution caution) {
            text.append("! ").append(caution.text()).append('\n');
        } else if (block instanceof Block.Points points) {
            points.points().forEach(point -> text.append("- ").append(point).append('\n'));
        } else if (block instanceof Block.Figures figures) {
            figures.figures().forEach(figure -> line(text, figure.name(), cell(figure.value()), figure.change()));
        } else if (block instanceof Block.Findings findings) {
            findings.findings().forEach(finding -> finding(finding, text));
        } else if (block instanceof Block.TableView view) {
            table(view, text);
        } else if (block instanceof Block.Columns columns) {
            columns.blocks().forEach(inner -> block(inner, text));
        } else if (block instanceof Block.Beside beside) {
            beside.left().forEach(inner -> block(inner, text));
            beside.right().forEach(inner -> block(inner, text));
        } else if (block instanceof ScatterChart chart) {
            scatter(chart, text);
        } else if (block instanceof BarChart chart) {
            line(text, "bars " + chart.name(), chart.title(), chart.valueTitle());
            chart.bars().forEach(bar -> line(text, bar.label(), number(bar.value())));
        } else if (block instanceof LineChart chart) {
            line(text, "lines " + chart.name(), chart.title(), chart.valueTitle());
            chart.lines()
                    .forEach(line -> line(
                            text,
                            line.name(),
                            line.values().stream()
                                    .map(value -> value.map(ReportDumps::number).orElse("-"))
                                    .collect(Collectors.joining(" "))));
        }
    }

    private static void finding(Finding finding, StringBuilder text) {
        String amount = finding.amount() == null ? "" : number(finding.amount().amount());
        line(text, finding.sentence(), amount, "-> " + finding.section());
    }

    private static void table(Block.TableView view, StringBuilder text) {
        Table table = view.table();
        text.append("[").append(table.name()).append("] ").append(table.title()).append('\n');
        line(text, view.keys().toArray(String[]::new));
        for (int row = 0; row < table.rows().size(); row++) {
            List<String> cells = new ArrayList<>();
            for (String key : view.keys()) {
                cells.add(cell(table.cell(row, key)));
            }
            line(text, cells.toArray(String[]::new));
        }
    }

    private static void scatter(ScatterChart chart, StringBuilder text) {
        line(text, "plot " + chart.name(), chart.title(), chart.xTitle(), chart.yTitle());
        chart.verticalCuts().forEach(cut -> line(text, "upright at " + number(cut.at()), cut.name()));
        chart.horizontalCuts().forEach(cut -> line(text, "level at " + number(cut.at()), cut.name()));
        for (ScatterChart.Point point : chart.points()) {
            String kind = point.kind().word() + (point.certain() ? "" : ", not certain");
            line(text, point.label(), number(point.x()), number(point.y()), kind);
        }
    }

    private static void line(StringBuilder text, String... parts) {
        text.append(String.join(" | ", parts).stripTrailing()).append('\n');
    }

    private static String cell(CellValue value) {
        if (value instanceof CellValue.Figure figure) {
            return number(figure.number());
        } else if (value instanceof CellValue.Sum sum) {
            return number(sum.money().amount());
        } else if (value instanceof CellValue.YesNo yesNo) {
            return yesNo.yes() ? "yes" : "no";
        } else if (value instanceof CellValue.Term term) {
            return term.said();
        } else if (value instanceof CellValue.Day day) {
            return day.date().toString();
        }
        return value instanceof CellValue.Text words ? words.text() : "";
    }

    private static String number(Exact number) {
        return number.isZero()
                ? "0"
                : number.toSignificant(8).stripTrailingZeros().toPlainString();
    }

    /** Every cell that holds something: a formula with its value, a number as it shows. */
    public static String workbook(byte[] bytes) {
        StringBuilder text = new StringBuilder();
        DataFormatter formatter = new DataFormatter(java.util.Locale.ROOT);
        formatter.setUseCachedValuesForFormulaCells(true);
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            for (Sheet sheet : workbook) {
                text.append("\n= ").append(sheet.getSheetName()).append('\n');
                for (Row row : sheet) {
                    List<String> cells = new ArrayList<>();
                    for (Cell cell : row) {
                        String shown = shown(formatter, cell);
                        String formula =
                                cell.getCellType() == CellType.FORMULA ? " {=" + cell.getCellFormula() + "}" : "";
                        if (!shown.isEmpty()) {
                            cells.add(cell.getAddress() + " " + shown + formula);
                        }
                    }
                    if (!cells.isEmpty()) {
                        line(text, cells.toArray(String[]::new));
                    }
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** The formatter takes a quoted percent mark for the one that multiplies. */
    private static String shown(DataFormatter formatter, Cell cell) {
        String pattern = cell.getCellStyle().getDataFormatString();
        boolean number = cell.getCellType() == CellType.NUMERIC
                || (cell.getCellType() == CellType.FORMULA && cell.getCachedFormulaResultType() == CellType.NUMERIC);
        return number && pattern.contains("%")
                ? formatter
                        .formatRawCellContents(cell.getNumericCellValue(), -1, pattern.replace("%", "pc"))
                        .replace("pc", "%")
                : formatter.formatCellValue(cell);
    }

    /** The bookmarks, then what each page says, in the order of its content. */
    public static String pdf(byte[] bytes) {
        StringBuilder text = new StringBuilder();
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            for (PDOutlineItem item :
                    pdf.getDocumentCatalog().getDocumentOutline().children()) {
                int page = pdf.getPages().indexOf(item.findDestinationPage(pdf)) + 1;
                text.append(item.getTitle()).append(" > ").append(page).append('\n');
            }
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setLineSeparator("\n");
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                text.append("\n--- ")
                        .append(page)
                        .append('\n')
                        .append(stripper.getText(pdf).stripTrailing())
                        .append('\n');
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
