package heeltap.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** The manual pages and the completion script name everything that the commands know. */
class ManualPagesTest {
    private static final CommandLine COMMANDS = new CommandLine(Main.class, new CommandFactory());

    @Test
    void everyCommandHasAPageThatNamesItsOptionsAndArguments(@TempDir Path temp) throws IOException {
        ManualPages.main(new String[] {temp.toString()});
        String overview = Files.readString(temp.resolve("heeltap.1"));
        assertThat(COMMANDS.getSubcommands()).hasSizeGreaterThanOrEqualTo(4);
        for (CommandLine command : COMMANDS.getSubcommands().values()) {
            String name = command.getCommandName();
            assertThat(overview).contains(".B heeltap\\-" + name + "(1)");
            String page = Files.readString(temp.resolve("heeltap-" + name + ".1"));
            assertThat(page)
                    .startsWith(".TH HEELTAP-" + name.toUpperCase(Locale.ROOT)
                            + " 1 \"\" \"heeltap 1.0.0\" \"Heeltap\"\n.SH NAME\n");
            for (OptionSpec option : command.getCommandSpec().options()) {
                for (String each : option.names()) {
                    assertThat(page).contains(each.replace("-", "\\-"));
                }
                assertThat(page).contains(option.description()[0].replace("-", "\\-"));
            }
            command.getCommandSpec()
                    .positionalParameters()
                    .forEach(argument -> assertThat(page).contains(".B " + argument.paramLabel() + "\n"));
            // each line that begins with a dot is a macro we mean
            assertThat(page.lines().filter(line -> line.startsWith(".") || line.startsWith("'")))
                    .allMatch(line -> line.matches("\\.(TH|SH|TP|PP|B)( .*)?"));
        }
        assertThat(temp.resolve("heeltap.bash"))
                .content()
                .isEqualTo(Run.of("completion").out());
    }

    @Test
    void completionNamesEveryCommandAndLongOption() {
        Run run = Run.of("completion");
        assertThat(run.code()).isZero();
        for (CommandLine command : COMMANDS.getSubcommands().values()) {
            assertThat(run.out()).contains("_picocli_heeltap_" + command.getCommandName() + "()");
            List<String> names = command.getCommandSpec().options().stream()
                    .flatMap(option -> Arrays.stream(option.names()))
                    .toList();
            assertThat(names).contains("--help");
            names.forEach(name -> assertThat(run.out()).containsPattern("['\" ]" + name + "['\" ]"));
        }
    }

    @Test
    void aFolderAloneIsReviewed(@TempDir Path temp) throws IOException {
        Path bar = CommandsTest.copy(
                Path.of("src/test/resources/heeltap/golden/nested-preparations/input"), temp.resolve("bar"));
        Run alone = Run.of(bar.toString());
        assertThat(alone.code()).as(alone.err()).isZero();
        assertThat(alone).isEqualTo(Run.of("review", bar.toString()));
        try (Stream<Path> reports = Files.list(temp.resolve("heeltap-out"))) {
            assertThat(reports).anyMatch(file -> file.toString().endsWith("-review.pdf"));
        }
        assertThat(Run.of(temp.resolve("nowhere").toString()).code()).isEqualTo(ExitCode.USAGE);
    }
}
