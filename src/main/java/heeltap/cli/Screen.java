package heeltap.cli;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.text.WordUtils;

/**
 * One stream that a command writes to, and what can be shown there.
 *
 * @param terminal whether a person watches: progress and broken lines only then
 * @param colour whether colour is welcome; never without a terminal
 * @param width columns of the terminal; without one nothing is broken, so that each thing stays on its line
 */
record Screen(PrintStream stream, boolean terminal, boolean colour, int width) {
    static final int USUAL_WIDTH = 80;
    /** Below this there is no room for two columns beside each other. */
    private static final int NARROW = 48;

    private static final int LEAST = 20;

    Screen {
        colour &= terminal;
        width = Math.max(LEAST, width);
    }

    /** A file or a pipe. */
    static Screen plain(PrintStream stream) {
        return new Screen(stream, false, false, USUAL_WIDTH);
    }

    void println(String line) {
        stream.println(line);
    }

    boolean isNarrow() {
        return terminal && width < NARROW;
    }

    /** Prints a line that stands out where colour is welcome. */
    void heading(String text) {
        for (String line : lines(text, width)) {
            println(colour ? "\u001b[1m" + line + "\u001b[0m" : line);
        }
    }

    /**
     * Prints text behind its label; lines that go on stand under the text.
     *
     * @param whole whether the text must stay on one line however long
     */
    void labelled(String label, int labelWidth, String text, boolean whole) {
        if (isNarrow()) {
            if (!label.isEmpty()) {
                println("  " + label);
            }
            (whole ? List.of(text) : lines(text, width - 4)).forEach(line -> println("    " + line));
            return;
        }
        List<String> lines = whole ? List.of(text) : lines(text, width - labelWidth - 4);
        for (int i = 0; i < lines.size(); i++) {
            String first = i == 0 ? label : "";
            println("  " + first + " ".repeat(Math.max(0, labelWidth - first.length())) + "  " + lines.get(i));
        }
    }

    /** Prints text with its first line and the lines that go on moved to the right by so many columns. */
    void wrapped(String text, int first, int others) {
        List<String> lines = lines(text, width - Math.max(first, others));
        for (int i = 0; i < lines.size(); i++) {
            println(" ".repeat(i == 0 ? first : others) + lines.get(i));
        }
    }

    private List<String> lines(String text, int room) {
        return terminal ? broken(text, Math.max(LEAST / 2, room), false) : List.of(text);
    }

    /** Text in lines of at most so many columns; longer words, such as paths, are cut only where asked. */
    static List<String> broken(String text, int room, boolean cutWords) {
        List<String> lines = new ArrayList<>();
        for (String line : WordUtils.wrap(text, room, "\n", false).split("\n", -1)) {
            String rest = line;
            while (cutWords && rest.length() > room) {
                int cut = cutBefore(rest, room);
                lines.add(rest.substring(0, cut));
                rest = rest.substring(cut);
            }
            lines.add(rest);
        }
        return lines;
    }

    /** Behind the last joint of the word that fits, else where the room ends. */
    private static int cutBefore(String word, int room) {
        for (int at = room; at > 1; at--) {
            if ("/-_".indexOf(word.charAt(at - 1)) >= 0) {
                return at;
            }
        }
        return room;
    }
}
