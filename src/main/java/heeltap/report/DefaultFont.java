package heeltap.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.TreeMap;

/**
 * A default font for the drawing library, which on Linux asks the machine for one before it reads the bundled ones, and
 * fails where the machine has none or lacks the library that finds them. So it is given a bundled one instead, by the
 * setting of the Java runtime that names a font configuration file.
 */
final class DefaultFont {
    private static final String SETTING = "sun.awt.fontconfig";
    private static final String NAME = "Liberation Sans";

    private DefaultFont() {}

    /**
     * Before the drawing library is first used. Where no file can be written, the machine's own fonts have to do; a setting
     * that a person made is left alone.
     *
     * @param font a TrueType file
     */
    static void provide(byte[] font) {
        boolean asksTheMachine =
                System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("linux");
        if (!asksTheMachine || System.getProperty(SETTING) != null) {
            return;
        }
        try {
            Path folder = Files.createTempDirectory("heeltap");
            folder.toFile().deleteOnExit();
            Path file = Files.write(folder.resolve("default.ttf"), font);
            file.toFile().deleteOnExit();
            Path configuration = Files.writeString(folder.resolve("fontconfig.properties"), configuration(file));
            configuration.toFile().deleteOnExit();
            System.setProperty(SETTING, configuration.toString());
        } catch (IOException e) {
            // a machine without room for temporary files may still have fonts
            System.clearProperty(SETTING);
        }
    }

    /** The bundled font for each of the five names that every Java runtime knows. */
    private static String configuration(Path file) {
        TreeMap<String, String> lines = new TreeMap<>();
        lines.put("version", "1");
        lines.put("sequence.allfonts", "latin-1");
        for (String family : new String[] {"dialog", "dialoginput", "monospaced", "sansserif", "serif"}) {
            for (String style : new String[] {"plain", "bold", "italic", "bolditalic"}) {
                lines.put(family + "." + style + ".latin-1", NAME);
            }
        }
        lines.put("filename." + NAME.replace(' ', '_'), file.toString());
        StringBuilder text = new StringBuilder();
        lines.forEach((key, value) ->
                text.append(key).append('=').append(value.replace("\\", "\\\\")).append('\n'));
        return text.toString();
    }
}
