package heeltap.report;

import heeltap.document.BarChart;
import heeltap.document.Block;
import heeltap.document.Document;
import heeltap.document.LineChart;
import heeltap.document.ScatterChart;
import heeltap.document.Section;
import heeltap.document.WorkbookSheet;
import heeltap.report.SheetWriter.ChartPlace;
import heeltap.report.SheetWriter.LinkPlace;
import heeltap.report.SheetWriter.TotalPlace;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.IntStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.util.LocaleUtil;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A document as a workbook. */
final class WorkbookReport {
    private final Document document;
    private final Instant stamp;
    private final XSSFWorkbook workbook;
    private final WorkbookParts parts;
    private final Map<String, SheetWriter> writers = new LinkedHashMap<>();
    private final Map<String, TablePlace> tables = new LinkedHashMap<>();

    private WorkbookReport(Document document, Instant stamp, XSSFWorkbook workbook) {
        this.document = document;
        this.stamp = stamp;
        this.workbook = workbook;
        Printing printing = new Printing(document.language(), document.currency());
        this.parts = new WorkbookParts(new WorkbookStyles(workbook, printing), printing, new Faces());
    }

    /** The same bytes for the same document and stamp. */
    static byte[] write(Document document, Instant stamp) {
        LocaleUtil.setUserLocale(document.language());
        LocaleUtil.setUserTimeZone(TimeZone.getTimeZone(ZoneOffset.UTC));
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            new WorkbookReport(document, stamp, workbook).fill();
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            workbook.write(bytes);
            return ZipTimes.fixed(bytes.toByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory", e);
        } finally {
            LocaleUtil.resetUserLocale();
            LocaleUtil.resetUserTimeZone();
        }
    }

    private void fill() {
        for (WorkbookSheet sheet : document.sheets()) {
            write(sheet);
        }
        List<ChartPlace> charts = writers.values().stream()
                .flatMap(writer -> writer.charts().stream())
                .toList();
        Optional<XSSFSheet> plotData = charts.isEmpty()
                ? Optional.empty()
                : Optional.of(workbook.createSheet(freeName(parts.words().get("plotData"))));
        writers.values().stream().limit(1).forEach(first -> first.summary().contents(sheetNames()));
        writers.values().forEach(writer -> writer.summary().links().forEach(this::link));
        writers.values().forEach(writer -> writer.summary().totals().forEach(this::follow));
        writers.values().forEach(SheetWriter::finish);
        plotData.ifPresent(sheet -> new ChartWriter(parts, tables, sheet).write(charts));
        nameColumns();
        for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
            XSSFSheet sheet = workbook.getSheetAt(i);
            new SheetPages(document, parts, sheet, Optional.ofNullable(writers.get(sheet.getSheetName()))).setUp();
        }
        workbook.setActiveSheet(0);
        workbook.setSelectedTab(0);
        describe();
    }

    private void write(WorkbookSheet sheet) {
        boolean first = writers.isEmpty();
        SheetWriter writer = new SheetWriter(parts, workbook.createSheet(sheet.name()));
        writers.put(sheet.name(), writer);
        writer.title(first ? document.bar() : "", first ? document.title() : sheet.name());
        if (!first) {
            writer.backLink(document.sheets().get(0).name());
        }
        if (first) {
            // the sheet of plot data comes on top
            writer.summary().keepContents(document.sheets().size());
        }
        writer.blocks(sheet.blocks());
        writer.tables().forEach(place -> tables.putIfAbsent(place.table().name(), place));
    }

    private List<String> sheetNames() {
        return IntStream.range(1, workbook.getNumberOfSheets())
                .mapToObj(workbook::getSheetName)
                .toList();
    }

    private String freeName(String wanted) {
        String name = wanted;
        for (int i = 2; workbook.getSheet(name) != null; i++) {
            name = wanted + " " + i;
        }
        return name;
    }

    /** A figure that is a table's total is that cell. */
    private void follow(TotalPlace figure) {
        String[] parts = figure.total().split("\\.", 2);
        TablePlace place = tables.get(parts[0]);
        if (place == null || place.table().total().isEmpty() || figure.cell().getCellType() != CellType.NUMERIC) {
            return;
        }
        double value = figure.cell().getNumericCellValue();
        figure.cell()
                .setCellFormula(TablePlace.quoted(place.sheet()) + "!"
                        + new CellReference(place.lastRow() + 1, place.column(parts[1])).formatAsString());
        figure.cell().setCellValue(value);
    }

    /** To the sheet that shows what the section shows: its first table or chart. */
    private void link(LinkPlace link) {
        document.sections().stream()
                .filter(section -> section.id().equals(link.section()))
                .findFirst()
                .flatMap(this::sheetOf)
                .ifPresent(sheet -> {
                    link.cell().setCellValue(sheet);
                    SheetRows.link(link.cell(), TablePlace.quoted(sheet) + "!A1");
                });
    }

    private Optional<String> sheetOf(Section section) {
        for (Block block : section.blocks()) {
            for (WorkbookSheet sheet : document.sheets()) {
                if (sheet.blocks().stream().anyMatch(other -> showsSame(block, other))) {
                    return Optional.of(sheet.name());
                }
            }
        }
        return Optional.empty();
    }

    private static boolean showsSame(Block block, Block other) {
        if (block instanceof Block.TableView view && other instanceof Block.TableView second) {
            return view.table().name().equals(second.table().name());
        } else if (block instanceof ScatterChart chart && other instanceof ScatterChart second) {
            return chart.name().equals(second.name());
        }
        if (block instanceof LineChart chart && other instanceof LineChart second) {
            return chart.name().equals(second.name());
        }
        return block instanceof BarChart chart
                && other instanceof BarChart second
                && chart.name().equals(second.name());
    }

    private void nameColumns() {
        Set<String> taken = new HashSet<>();
        for (TablePlace place : tables.values()) {
            for (int c = 0; c < place.table().columns().size() && !place.isEmpty(); c++) {
                if (taken.add(place.nameOf(c).toLowerCase(Locale.ROOT))) {
                    XSSFName name = workbook.createName();
                    name.setNameName(place.nameOf(c));
                    name.setRefersToFormula(place.range(c));
                }
            }
        }
    }

    private void describe() {
        POIXMLProperties.CoreProperties core = workbook.getProperties().getCoreProperties();
        core.setTitle(document.bar() + " \u2013 " + document.title());
        core.setCreator(document.bar());
        core.setCreated(Optional.of(Date.from(stamp)));
        core.setModified(Optional.of(Date.from(stamp)));
        core.setLastModifiedByUser("Heeltap");
        workbook.getProperties().getExtendedProperties().setApplication("Heeltap");
    }
}
