package heeltap.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Enumeration;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** The zip archive around a workbook. The library would read what is left of a damaged one. */
final class XlsxArchive {
    static final String COPY_AGAIN =
            "Copy or download the file again, or open it in a spreadsheet program and save it anew.";

    private XlsxArchive() {}

    static void check(Path path) throws UnreadableFile {
        try (ZipFile zip = new ZipFile(path.toFile())) {
            refuseOtherKinds(zip);
            byte[] buffer = new byte[1 << 16];
            for (Enumeration<? extends ZipEntry> entries = zip.entries(); entries.hasMoreElements(); ) {
                ZipEntry entry = entries.nextElement();
                if (isRead(entry) && crc(zip, entry, buffer) != entry.getCrc()) {
                    throw damaged();
                }
            }
        } catch (IOException damage) {
            throw damaged();
        }
    }

    /** Pictures and the like are not read. */
    private static boolean isRead(ZipEntry entry) {
        return entry.getName().endsWith(".xml") || entry.getName().endsWith(".rels");
    }

    private static long crc(ZipFile zip, ZipEntry entry, byte[] buffer) throws IOException {
        CRC32 crc = new CRC32();
        try (InputStream in = zip.getInputStream(entry)) {
            for (int count = in.read(buffer); count > 0; count = in.read(buffer)) {
                crc.update(buffer, 0, count);
            }
        }
        return crc.getValue();
    }

    private static void refuseOtherKinds(ZipFile zip) throws UnreadableFile {
        if (zip.getEntry("xl/workbook.bin") != null) {
            throw new UnreadableFile(
                    "The workbook is of the binary kind (.xlsb), which is not read.", "Save it as .xlsx.");
        }
        if (zip.getEntry("[Content_Types].xml") == null || zip.getEntry("word/document.xml") != null) {
            throw new UnreadableFile(
                    "The file is a zip archive but no Excel workbook.",
                    "Unpack it, or save the table in it as .xlsx or CSV.");
        }
    }

    private static UnreadableFile damaged() {
        return new UnreadableFile("The workbook is damaged or cut off.", COPY_AGAIN);
    }
}
