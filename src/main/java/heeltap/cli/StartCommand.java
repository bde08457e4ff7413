package heeltap.cli;

import heeltap.load.TemplateFile;
import heeltap.load.Templates;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.apache.commons.io.FileUtils;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code heeltap start}. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        description = {
            "Makes a new, blank bar folder.",
            "It holds a blank version of every sheet, and a page that explains each heading. The folder must not exist yet, or be empty."
        })
final class StartCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "DIR", description = "The folder to make.")
    private Path folder = Path.of("");

    StartCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Path target = folder.toAbsolutePath().normalize();
        boolean existed = Files.exists(target);
        try {
            if (existed && !isEmptyFolder(target)) {
                console.err().println("stop: " + target + " exists and is not empty. Name a new folder.");
                return ExitCode.INPUT;
            }
            write(target);
        } catch (IOException e) {
            console.err().println("stop: " + target + " could not be written: " + e.getMessage());
            if (!existed) {
                delete(target);
            }
            return ExitCode.WRITE;
        }
        Screen out = console.out();
        out.println("A blank bar folder is in " + target);
        out.wrapped("1. Fill in book/settings.csv: at least currency, and whether menu prices include tax.", 2, 5);
        out.wrapped("2. List ingredients, preparations, drinks and their specs in book/.", 2, 5);
        out.wrapped(
                "3. Rename the folder month to the month, such as 2026-10, and put the till's export and the suppliers'"
                        + " invoices into it.",
                2,
                5);
        out.wrapped("HEADINGS.md explains every heading.", 2, 2);
        return ExitCode.DONE;
    }

    private static void write(Path target) throws IOException {
        for (TemplateFile file : Templates.files()) {
            Path path = target.resolve(file.path());
            Path parent = path.getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            Files.writeString(path, file.text(), StandardCharsets.UTF_8);
        }
    }

    private static boolean isEmptyFolder(Path target) throws IOException {
        if (!Files.isDirectory(target)) {
            return false;
        }
        try (Stream<Path> entries = Files.list(target)) {
            return entries.findAny().isEmpty();
        }
    }

    /** Takes back what was made; what cannot be taken back stays, and the message has said so. */
    private void delete(Path target) {
        try {
            FileUtils.deleteDirectory(target.toFile());
        } catch (IOException e) {
            console.err().println("note: what was begun in " + target + " could not be removed: " + e.getMessage());
        }
    }
}
