package heeltap.report;

import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.FontMapper;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The typefaces of one report, read from the bundled files of the Liberation fonts (SIL Open Font License 1.1), so that
 * no font of the machine is needed. They cover Latin, Greek and Cyrillic.
 */
final class Faces implements FontMapper {
    enum Face {
        PLAIN("Sans-Regular"),
        BOLD("Sans-Bold"),
        ITALIC("Sans-Italic"),
        SERIF("Serif-Regular");

        private final String file;

        Face(String name) {
            this.file = "Liberation" + name + ".ttf";
        }
    }

    /** The font with which a drawing begins before any is set. */
    private static final String UNSET = "sanserif";

    /** Currency signs younger than the fonts, with the codes of their currencies. */
    private static final Map<String, String> YOUNG_SIGNS = Map.of(
            "\u20B8", "KZT", "\u20B9", "INR", "\u20BA", "TRY", "\u20BC", "AZN", "\u20BD", "RUB", "\u20BE", "GEL");

    private final Map<Face, BaseFont> forPdf = new EnumMap<>(Face.class);
    private final Map<Face, Font> forDrawing = new EnumMap<>(Face.class);

    Faces() {
        for (Face face : Face.values()) {
            byte[] bytes = read(face);
            forPdf.put(face, baseFont(face, bytes));
        }
    }

    BaseFont base(Face face) {
        BaseFont font = forPdf.get(face);
        if (font == null) {
            throw new IllegalStateException("no face " + face);
        }
        return font;
    }

    /** For drawing through Java 2D; the same glyphs and widths as in text. */
    Font drawing(Face face, float size) {
        return forDrawing.computeIfAbsent(face, f -> awtFont(read(f))).deriveFont(size);
    }

    /** In points. */
    float width(Face face, String text, float size) {
        return base(face).getWidthPoint(text, size);
    }

    /**
     * The text without what cannot be shown: line breaks become spaces, a currency sign that the font lacks its ISO 4217
     * code, other letters outside the font a hollow square.
     */
    String printable(Face face, String original) {
        BaseFont font = base(face);
        String text = original;
        for (Map.Entry<String, String> sign : YOUNG_SIGNS.entrySet()) {
            if (text.contains(sign.getKey()) && !font.charExists(sign.getKey().charAt(0))) {
                text = text.replaceAll(sign.getKey() + "(?=\\d)", sign.getValue() + "\u00A0")
                        .replace(sign.getKey(), sign.getValue());
            }
        }
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (c == 0x202F) {
                shown.append('\u00A0');
            } else if (c < 0x20 || c == 0x7F) {
                shown.append(' ');
            } else if (!Character.isSupplementaryCodePoint(c) && font.charExists(c)) {
                shown.append((char) c);
            } else if (Character.getType(c) != Character.FORMAT) {
                shown.append('\u25A1');
            }
        });
        return shown.toString();
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
            return BaseFont.createFont(face.file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, false, bytes, null);
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
        String path = "/liberation/" + face.file;
        try (InputStream stream = Faces.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks its font " + path);
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
