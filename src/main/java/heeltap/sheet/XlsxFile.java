package heeltap.sheet;

import heeltap.source.Place;
import heeltap.source.Sheet;
import heeltap.source.SheetFacts;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.ref.SoftReference;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.util.XMLHelper;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** A workbook of the XML kind. Nothing stays open between two readings, and no row is kept. */
final class XlsxFile {
    /** Long columns of equal rows shrink to less than the hundredth that the library takes for an attack. */
    private static final double LEAST_RATIO = 0.001;

    private final Path path;
    private final XlsxWorkbook workbook;
    private final XlsxStyles styles;
    private SoftReference<List<String>> texts = new SoftReference<>(null);

    private XlsxFile(Path path, XlsxWorkbook workbook, XlsxStyles styles) {
        this.path = path;
        this.workbook = workbook;
        this.styles = styles;
    }

    static List<Sheet> open(Path path, String name) throws UnreadableFile, IOException {
        XlsxArchive.check(path);
        ZipSecureFile.setMinInflateRatio(LEAST_RATIO);
        try (XlsxPackage open = new XlsxPackage(path)) {
            XlsxWorkbook workbook = new XlsxWorkbook();
            parse(open.workbook(), workbook);
            XlsxStyles styles = new XlsxStyles();
            PackagePart stylesPart = open.related("/styles");
            if (stylesPart != null) {
                parse(stylesPart, styles);
            }
            XlsxFile file = new XlsxFile(path, workbook, styles);
            file.sharedTexts(open);
            List<Sheet> sheets = new ArrayList<>();
            for (XlsxWorkbook.Entry entry : workbook.sheets()) {
                if (open.isWorksheet(entry.relation())) {
                    sheets.add(file.sheet(open, entry, name));
                }
            }
            return sheets;
        } catch (SAXException | InvalidFormatException damage) {
            throw new UnreadableFile(
                    "The workbook is damaged or cut off: one of its parts cannot be read.", XlsxArchive.COPY_AGAIN);
        } catch (IOException | UncheckedIOException damage) {
            throw new UnreadableFile(
                    "The workbook is damaged or cut off: it cannot be unpacked.", XlsxArchive.COPY_AGAIN);
        }
    }

    private Sheet sheet(XlsxPackage open, XlsxWorkbook.Entry entry, String name)
            throws IOException, SAXException, InvalidFormatException {
        Place place = Place.of(name, entry.name());
        XlsxCheck check = new XlsxCheck(new OddPlaces(place));
        PackagePart part = open.part(entry.relation());
        parse(part, check);
        if (!check.merged().isEmpty()) {
            SheetFacts bare = new SheetFacts(place, "", "", entry.hidden(), List.of());
            Sheet.RowReader naming = check.merged().namingCovered(check.odd());
            new XlsxSheet(this, entry.relation(), new MergedCells(), bare)
                    .read(row -> row.number() <= check.merged().lastRow() && naming.take(row));
        }
        SheetFacts facts = new SheetFacts(
                place, "", "", entry.hidden(), workbook.since1904(), check.odd().problems());
        return new XlsxSheet(this, entry.relation(), check.merged(), facts);
    }

    /** Hands the events of one sheet to a handler made for it. */
    void read(String relation, HandlerMaker maker) throws IOException, SAXException {
        try (XlsxPackage open = new XlsxPackage(path)) {
            List<String> shared = sharedTexts(open);
            parse(open.part(relation), maker.make(shared, styles, new NumberCells(workbook.since1904())));
        } catch (InvalidFormatException damage) {
            throw new IOException(damage);
        }
    }

    /** Makes the handler that reads one sheet. */
    interface HandlerMaker {
        DefaultHandler make(List<String> shared, XlsxStyles styles, NumberCells numbers);
    }

    private List<String> sharedTexts(XlsxPackage open) throws IOException, SAXException, InvalidFormatException {
        List<String> known = texts.get();
        if (known == null) {
            PackagePart part = open.related("/sharedStrings");
            XlsxSharedTexts handler = new XlsxSharedTexts();
            if (part != null) {
                parse(part, handler);
            }
            known = handler.texts();
            texts = new SoftReference<>(known);
        }
        return known;
    }

    private static void parse(PackagePart part, DefaultHandler handler) throws IOException, SAXException {
        try (InputStream in = part.getInputStream()) {
            XMLReader reader = XMLHelper.newXMLReader();
            reader.setContentHandler(handler);
            reader.setErrorHandler(handler);
            reader.parse(new InputSource(in));
        } catch (ParserConfigurationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
