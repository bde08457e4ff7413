package heeltap.sheet;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.Locale;

/**
 * What a first reading of all characters of a text file tells.
 *
 * @param dropped characters that no cell can hold (NUL, end-of-file mark, byte-order mark), and where the first stands
 * @param unknown characters that could not be decoded, and where the first stands
 * @param sample the beginning without the dropped characters, up to a line end
 * @param whole whether the sample is all there is
 * @param ended whether the text ends with a line end
 */
record TextSurvey(Found dropped, Found unknown, String sample, boolean whole, boolean ended) {
    private static final int SAMPLE = 1 << 18;
    private static final int LONGEST_LINE = 1 << 20;

    /** Of a hundred characters of a text, fewer than this are control or undefined characters. */
    private static final int ODD_PERCENT = 2;

    private static final int UNKNOWN_PERCENT = 20;
    private static final int FEW = 3;

    /** How many, and the physical line of the first; 0 and 0 where there is none. */
    record Found(long count, int line) {}

    static TextSurvey of(Path file, TextEncoding encoding) throws IOException, UnreadableFile {
        Counter counter = new Counter();
        char[] buffer = new char[1 << 15];
        try (Reader reader = encoding.open(file)) {
            for (int count = reader.read(buffer); count > 0; count = reader.read(buffer)) {
                for (int i = 0; i < count; i++) {
                    counter.add(buffer[i]);
                }
                if (counter.longest > LONGEST_LINE) {
                    break;
                }
            }
        }
        counter.refuseWhatIsNoTable();
        return counter.survey();
    }

    /** Characters that are no text and are left out: NUL, the end-of-file mark of old systems, a byte-order mark. */
    static boolean isDropped(char c) {
        return c == 0 || c == '\u001a' || c == '\ufeff';
    }

    private static final class Counter {
        private final StringBuilder sample = new StringBuilder();
        private long texts;
        private long odd;
        private int line = 1;
        private int length;
        private int longest;
        private char before;
        private long dropped;
        private int firstDropped;
        private long unknown;
        private int firstUnknown;

        void add(char c) {
            if (c == '\n' || c == '\r') {
                line += c == '\n' && before == '\r' ? 0 : 1;
                length = 0;
            } else {
                longest = Math.max(longest, ++length);
            }
            before = c;
            if (c < ' ' || c >= 0x7f) {
                addUnusual(c);
            } else if (c > ' ') {
                texts++;
            }
            if (sample.length() < SAMPLE && !isDropped(c)) {
                sample.append(c);
            }
        }

        private void addUnusual(char c) {
            if (isDropped(c)) {
                firstDropped = dropped++ == 0 ? line : firstDropped;
            } else if (c == '\ufffd') {
                firstUnknown = unknown++ == 0 ? line : firstUnknown;
            } else if (!Blank.is(String.valueOf(c))) {
                odd += Character.getType(c) == Character.UNASSIGNED || Character.getType(c) == Character.PRIVATE_USE
                        ? 1
                        : 0;
                texts++;
            } else if (c < ' ' && c != '\t' && c != '\n' && c != '\r' && c != '\f') {
                odd++;
            }
        }

        void refuseWhatIsNoTable() throws UnreadableFile {
            boolean many = odd > FEW && odd * 100 > (texts + odd) * ODD_PERCENT;
            if (many || unknown * 100 > texts * UNKNOWN_PERCENT || (texts == 0 && dropped > 0)) {
                throw new UnreadableFile(
                        "The file is no text table and no workbook: it holds bytes that no text has.",
                        "Export it again as CSV, or open it in the program it came from and save it as .xlsx.");
            }
            if (texts == 0) {
                throw new UnreadableFile(
                        "The file is empty: it holds nothing but white space.", "Export it again, or delete it.");
            }
            if (longest > LONGEST_LINE) {
                throw new UnreadableFile(
                        "The file has a line of more than a million characters, so it is no table.",
                        "Export it again as CSV or as an Excel workbook.");
            }
            refuseMarkup();
        }

        private void refuseMarkup() throws UnreadableFile {
            String start =
                    sample.substring(0, Math.min(sample.length(), 4096)).strip().toLowerCase(Locale.ROOT);
            if (start.startsWith("<?xml") && start.contains("urn:schemas-microsoft-com:office:spreadsheet")) {
                throw new UnreadableFile(
                        "The file is a spreadsheet in the XML format of 2003, which is not read.",
                        "Open it in a spreadsheet program and save it as .xlsx.");
            }
            if (start.startsWith("<!doctype html") || start.startsWith("<html") || start.startsWith("<table")) {
                throw new UnreadableFile(
                        "The file is a web page (HTML), whatever its name says.",
                        "Open it in a spreadsheet program and save it as .xlsx or CSV.");
            }
            if (start.startsWith("<?xml")) {
                throw new UnreadableFile(
                        "The file is an XML document, not a table.", "Export it as CSV or as an Excel workbook.");
            }
            if (start.startsWith("{\\rtf")) {
                throw new UnreadableFile(
                        "The file is a word processor's document, not a table.",
                        "Export it as CSV or as an Excel workbook.");
            }
        }

        TextSurvey survey() {
            boolean whole = sample.length() < SAMPLE;
            String text = sample.toString();
            int cut = Math.max(text.lastIndexOf('\n'), text.lastIndexOf('\r')) + 1;
            return new TextSurvey(
                    new Found(dropped, firstDropped),
                    new Found(unknown, firstUnknown),
                    whole || cut == 0 ? text : text.substring(0, cut),
                    whole,
                    before == '\n' || before == '\r');
        }
    }
}
