package heeltap.report;

import java.awt.Color;
import java.util.List;

/** Sizes (points) and colours that all pages, charts and sheets share. */
final class Look {
    static final Color INK = new Color(0x24, 0x22, 0x26);
    static final Color QUIET = new Color(0x6B, 0x66, 0x6E);
    static final Color FAINT = new Color(0xC9, 0xC4, 0xC8);
    static final Color HAIRLINE = new Color(0xDD, 0xD8, 0xDB);
    static final Color TINT = new Color(0xF6, 0xF1, 0xF3);
    /** Of cells in which a reader may type. */
    static final Color ENTRY = new Color(0xFF, 0xFB, 0xEA);
    /** Damson, the one accent. */
    static final Color ACCENT = new Color(0x6A, 0x2A, 0x4E);

    /**
     * Colours of the marks, by the order of their kind: safe for colour-blind readers after M. Okabe and K. Ito, Color
     * Universal Design (2008). Shapes differ too.
     */
    static final List<Color> MARKS = List.of(
            new Color(0x00, 0x72, 0xB2),
            new Color(0xD5, 0x5E, 0x00),
            new Color(0x00, 0x9E, 0x73),
            new Color(0xCC, 0x79, 0xA7),
            new Color(0xE6, 0x9F, 0x00),
            new Color(0x56, 0xB4, 0xE9),
            new Color(0x33, 0x33, 0x33),
            new Color(0xF0, 0xE4, 0x42));

    static final float TITLE = 25;
    static final float SECTION = 18;
    static final float HEADING = 10.5f;
    static final float BODY = 9;
    /** Of what stands in columns. */
    static final float SMALL_BODY = 8.25f;

    static final float SMALL = 7.5f;
    static final float TABLE = 8.25f;
    /** No text of a table is set smaller. */
    static final float TABLE_FLOOR = 6;

    static final float LEADING = 1.34f;

    private Look() {}
}
