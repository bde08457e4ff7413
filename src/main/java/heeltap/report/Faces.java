package heeltap.report;

import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.FontMapper;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The typefaces of one report, read from bundled files, so that no font of the machine is needed: the Liberation fonts
 * (SIL Open Font License 1.1), which cover Latin, Greek and Cyrillic, and for what they lack, younger currency signs above
 * all, the DejaVu fonts (their license stands beside them).
 */
final class Faces implements FontMapper {
    enum Face {
        PLAIN("/liberation/LiberationSans-Regular.ttf"),
        BOLD("/liberation/LiberationSans-Bold.ttf"),
        ITALIC("/liberation/LiberationSans-Italic.ttf"),
        SERIF("/liberation/LiberationSerif-Regular.ttf"),
        SIGNS("/heeltap/report/dejavu/DejaVuSans.ttf"),
        BOLD_SIGNS("/heeltap/report/dejavu/DejaVuSans-Bold.ttf");

        private final String file;

        Face(String file) {
            this.file = file;
        }

        private Face signs() {
            return this == BOLD ? BOLD_SIGNS : SIGNS;
        }
    }

    /**
     * A stretch of text in one typeface.
     *
     * @param text of letters that it has
     */
    record Run(Face face, String text) {}

    private static final char UNKNOWN = '\u25A1';
    private static final int NOTHING = -1;

    /** The font with which a drawing begins before any is set. */
    private static final String UNSET = "sanserif";

    /** Currency signs younger than the fonts, with the codes of their currencies. */
    private static final Map<String, String> YOUNG_SIGNS = Map.of(
            "\u20B8", "KZT", "\u20B9", "INR", "\u20BA", "TRY", "\u20BC", "AZN", "\u20BD", "RUB", "\u20BE", "GEL",
            "\u20C0", "KGS");

    static {
        DefaultFont.provide(read(Face.PLAIN));
    }

    private final Map<Face, BaseFont> forPdf = new EnumMap<>(Face.class);
    private final Map<Face, Font> forDrawing = new EnumMap<>(Face.class);

    BaseFont base(Face face) {
        return forPdf.computeIfAbsent(face, f -> baseFont(f, read(f)));
    }

    /** For drawing through Java 2D; the same glyphs and widths as in text. */
    Font drawing(Face face, float size) {
        return forDrawing.computeIfAbsent(face, f -> awtFont(read(f))).deriveFont(size);
    }

    /** In points. */
    float width(Face face, String text, float size) {
        float width = 0;
        for (Run run : runs(face, text)) {
            width += base(run.face()).getWidthPoint(run.text(), size);
        }
        return width;
    }

    /**
     * The text as it can be shown, each stretch in a typeface that has its letters. Line breaks become spaces, a currency
     * sign that no typeface has its ISO 4217 code, other letters without a typeface a hollow square, and so do those to lend that
     * are written from right to left, since they would stand in the wrong order.
     */
    List<Run> runs(Face face, String original) {
        String text = withCodes(face, original);
        List<Run> runs = new ArrayList<>();
        StringBuilder stretch = new StringBuilder(text.length());
        Face[] current = {face};
        text.codePoints().map(Faces::shown).filter(c -> c != NOTHING).forEach(c -> {
            boolean own = has(face, c);
            boolean lent = !own && !isFromRightToLeft(c) && has(face.signs(), c);
            Face next = lent ? face.signs() : face;
            if (next != current[0] && stretch.length() > 0) {
                runs.add(new Run(current[0], stretch.toString()));
                stretch.setLength(0);
            }
            current[0] = next;
            stretch.append(own || lent ? (char) c : UNKNOWN);
        });
        if (stretch.length() > 0) {
            runs.add(new Run(current[0], stretch.toString()));
        }
        return List.copyOf(runs);
    }

    /** The same in one typeface alone: what it lacks is a hollow square. */
    String printable(Face face, String original) {
        StringBuilder all = new StringBuilder();
        for (Run run : runs(face, original)) {
            all.append(
                    run.face() == face
                            ? run.text()
                            : String.valueOf(UNKNOWN).repeat(run.text().length()));
        }
        return all.toString();
    }

    private String withCodes(Face face, String original) {
        String text = original;
        for (Map.Entry<String, String> sign : YOUNG_SIGNS.entrySet()) {
            int letter = sign.getKey().charAt(0);
            if (text.contains(sign.getKey()) && !has(face, letter) && !has(face.signs(), letter)) {
                text = text.replaceAll(sign.getKey() + "(?=\\d)", sign.getValue() + "\u00A0")
                        .replace(sign.getKey(), sign.getValue());
            }
        }
        return text;
    }

    private boolean has(Face face, int letter) {
        return !Character.isSupplementaryCodePoint(letter) && base(face).charExists(letter);
    }

    private static boolean isFromRightToLeft(int letter) {
        byte direction = Character.getDirectionality(letter);
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }

    /** Spaces for what breaks lines, nothing for marks that only direct other letters. */
    private static int shown(int letter) {
        if (letter == 0x202F) {
            return 0x00A0;
        } else if (letter < 0x20 || letter == 0x7F) {
            return ' ';
        }
        return Character.getType(letter) == Character.FORMAT ? NOTHING : letter;
    }

    @Override
    public BaseFont awtToPdf(Font font) {
        if (font.getName().equals(UNSET)) {
            return base(Face.PLAIN);
        }
        for (Map.Entry<Face, Font> entry : forDrawing.entrySet()) {
            if (entry.getValue().getFontName().equals(font.getFontName())) {
                return base(entry.getKey());
            }
        }
        throw new IllegalArgumentException("a drawing may use the bundled fonts only, not " + font);
    }

    @Override
    public @Nullable Font pdfToAwt(BaseFont font, int size) {
        throw new UnsupportedOperationException("never asked for");
    }

    private static BaseFont baseFont(Face face, byte[] bytes) {
        try {
            return BaseFont.createFont(
                    face.file.substring(face.file.lastIndexOf('/') + 1),
                    BaseFont.IDENTITY_H,
                    BaseFont.EMBEDDED,
                    false,
                    bytes,
                    null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Font awtFont(byte[] bytes) {
        try {
            return Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(bytes));
        } catch (FontFormatException e) {
            throw new IllegalStateException("a bundled font is broken", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] read(Face face) {
        try (InputStream stream = Faces.class.getResourceAsStream(face.file)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks its font " + face.file);
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
