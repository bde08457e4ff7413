package heeltap.report;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Gives all entries of an archive one fixed time, so that bytes repeat. */
final class ZipTimes {
    /** Not the first day of 1980, which some zones put into 1979. */
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

    private ZipTimes() {}

    static byte[] fixed(byte[] archive) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(archive.length);
        try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(archive));
                ZipOutputStream to = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
                ZipEntry fixed = new ZipEntry(entry.getName());
                fixed.setTimeLocal(TIME);
                to.putNextEntry(fixed);
                from.transferTo(to);
                to.closeEntry();
            }
        }
        return bytes.toByteArray();
    }
}
