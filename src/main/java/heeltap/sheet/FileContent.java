package heeltap.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** What the first bytes of a file say it is. */
enum FileContent {
    /** A zip archive: a workbook of the XML kind. */
    ZIP,
    /** A compound file: a legacy workbook, or a workbook under a password. */
    COMPOUND,
    /** Anything else may be text. */
    TEXT;

    private static final int HEAD = 8;

    static FileContent of(Path file) throws IOException, UnreadableFile {
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(HEAD);
        }
        if (head.length == 0) {
            throw new UnreadableFile("The file is empty: it has no bytes at all.", "Export it again, or delete it.");
        }
        String start = new String(head, StandardCharsets.ISO_8859_1);
        if (start.startsWith("PK\u0003\u0004") || start.startsWith("PK\u0005\u0006")) {
            return ZIP;
        }
        if (start.startsWith("\u00d0\u00cf\u0011\u00e0")) {
            return COMPOUND;
        }
        refuseKnown(start);
        return TEXT;
    }

    private static void refuseKnown(String start) throws UnreadableFile {
        if (start.startsWith("%PDF")) {
            throw new UnreadableFile(
                    "The file is a PDF document, not a table.", "Ask its sender for a CSV file or an Excel workbook.");
        }
        if (isOldWorkbook(start)) {
            throw new UnreadableFile(
                    "The workbook was saved by a version of Excel from before 1997.",
                    "Open it in a spreadsheet program and save it as .xlsx.");
        }
    }

    /** The first record of BIFF2 to BIFF4, which had no compound file around them. */
    private static boolean isOldWorkbook(String start) {
        return start.startsWith("\u0009\u0000\u0004\u0000")
                || start.startsWith("\u0009\u0002\u0006\u0000")
                || start.startsWith("\u0009\u0004\u0006\u0000");
    }
}
