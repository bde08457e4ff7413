package heeltap.report;

import heeltap.report.Faces.Face;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;

/** How text is set: face, size in points, colour. */
record Ink(Face face, float size, Color color) {
    static final Ink BODY = new Ink(Face.PLAIN, Look.BODY, Look.INK);
    static final Ink SMALL = new Ink(Face.PLAIN, Look.SMALL, Look.QUIET);
    static final Ink NOTE = new Ink(Face.ITALIC, Look.SMALL + 0.5f, Look.QUIET);
    static final Ink HEADING = new Ink(Face.BOLD, Look.HEADING, Look.INK);
    static final Ink SECTION = new Ink(Face.SERIF, Look.SECTION, Look.INK);

    float leading() {
        return size * Look.LEADING;
    }

    /** In points, as the text will be shown. */
    float width(Faces faces, String text) {
        return faces.width(face, text, size);
    }

    Ink at(float newSize) {
        return new Ink(face, newSize, color);
    }

    Ink in(Color newColor) {
        return new Ink(face, size, newColor);
    }

    Ink in(Face newFace) {
        return new Ink(newFace, size, color);
    }

    /** Lines no wider than {@code width}: broken at spaces and after hyphens and slashes, a longer word inside. */
    List<String> wrap(Faces faces, String text, float width) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) {
            StringBuilder line = new StringBuilder();
            for (String word : words(paragraph)) {
                if (width(faces, line + word.stripTrailing()) > width && !line.isEmpty()) {
                    lines.add(line.toString().stripTrailing());
                    line.setLength(0);
                }
                line.append(breakLong(faces, word, width, lines));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    /** The widest piece that {@link #wrap} keeps whole. */
    float widestWord(Faces faces, String text) {
        float widest = 0;
        for (String word : words(text.replace('\n', ' '))) {
            widest = Math.max(widest, width(faces, word.stripTrailing()));
        }
        return widest;
    }

    private String breakLong(Faces faces, String word, float width, List<String> lines) {
        String rest = word;
        while (width(faces, rest.stripTrailing()) > width && rest.length() > 1) {
            int fits = 1;
            while (fits < rest.length() - 1 && width(faces, rest.substring(0, fits + 1)) <= width) {
                fits++;
            }
            lines.add(rest.substring(0, fits));
            rest = rest.substring(fits);
        }
        return rest;
    }

    /** Each with the space, hyphen or slash behind it. */
    private static List<String> words(String text) {
        List<String> words = new ArrayList<>();
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean inside = i > start && i + 1 < text.length() && Character.isLetter(text.charAt(i + 1));
            if (c == ' ' || ((c == '-' || c == '/' || c == '_') && inside)) {
                words.add(text.substring(start, i + 1));
                start = i + 1;
            }
        }
        words.add(text.substring(start));
        return words;
    }
}
