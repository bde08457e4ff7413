package heeltap.cli;

import java.io.Console;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** What the surroundings can show. */
final class Terminals {
    private static final int CHARACTER_DEVICE = 0x2000;
    private static final int FILE_TYPE = 0xF000;
    private static final Path TTY = Path.of("/dev/tty");

    private Terminals() {}

    /**
     * A stream of this process.
     *
     * @param device the stream's name among the devices, such as {@code /dev/stdout}, where the system has such names
     * @param environment of the process: NO_COLOR, TERM, COLUMNS
     */
    static Screen screen(PrintStream stream, Path device, Map<String, String> environment) {
        if (!isTerminal(device)) {
            return Screen.plain(stream);
        }
        return new Screen(stream, true, wantsColour(environment), width(environment));
    }

    /** The convention of no-color.org: any text in NO_COLOR means none. */
    static boolean wantsColour(Map<String, String> environment) {
        return environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
    }

    private static boolean isTerminal(Path device) {
        if (!Files.exists(device)) {
            return hasConsole();
        }
        try {
            return Files.getAttribute(device, "unix:mode") instanceof Integer mode
                    && (mode & FILE_TYPE) == CHARACTER_DEVICE;
        } catch (IOException | UnsupportedOperationException | IllegalArgumentException noSuchView) {
            return hasConsole();
        }
    }

    /** Up to Java 21 a console is there only on a terminal; from 22 on it always is and has to be asked itself. */
    @SuppressWarnings("SystemConsoleNull")
    private static boolean hasConsole() {
        Console console = System.console();
        if (console == null || Runtime.version().feature() < 22) {
            return console != null;
        }
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** COLUMNS, else what the terminal says of itself, else the usual width. */
    static int width(Map<String, String> environment) {
        int set = number(environment.getOrDefault("COLUMNS", ""));
        int width = set > 0 ? set : askTerminal();
        return width > 0 ? width : Screen.USUAL_WIDTH;
    }

    /** Columns by {@code stty size}, which says rows and columns; 0 where it does not. */
    private static int askTerminal() {
        if (!Files.exists(TTY)) {
            return 0;
        }
        try {
            Process process = new ProcessBuilder("stty", "size")
                    .redirectInput(TTY.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            String[] answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.US_ASCII)
                    .strip()
                    .split(" ", -1);
            boolean ended = process.waitFor(1, TimeUnit.SECONDS);
            return ended && answer.length == 2 ? number(answer[1]) : 0;
        } catch (IOException noSuchProgram) {
            return 0;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return 0;
        }
    }

    private static int number(String text) {
        return text.matches("\\d{1,4}") ? Integer.parseInt(text) : 0;
    }
}
