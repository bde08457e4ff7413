package heeltap.cli;

import java.io.File;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.YearMonth;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The program's entry. */
@Command(
        name = "heeltap",
        mixinStandardHelpOptions = true,
        subcommands = {ReviewCommand.class, CheckCommand.class, StartCommand.class, CompletionCommand.class},
        version = Main.VERSION,
        description = {
            "Reviews a bar's month from its spreadsheets.",
            "It tells what the drinks cost, which ones earn, what to charge, and where the liquor went."
        },
        footer = {
            "",
            "A bar folder alone is reviewed for its latest month: heeltap my-bar.",
            "",
            "Exit codes: 0 done; 1 the input cannot be reviewed; 2 wrong usage; 3 could not write."
        })
public final class Main implements Runnable {
    static final String VERSION = "heeltap 1.0.0";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private Main() {}

    public static void main(String[] args) {
        // UTF-8 whatever the machine's own character set, so that every name prints as it is
        PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        Map<String, String> environment = System.getenv();
        Console console = new Console(
                Terminals.screen(out, Path.of("/dev/stdout"), environment),
                Terminals.screen(err, Path.of("/dev/stderr"), environment));
        int code = run(console, args);
        out.flush();
        System.exit(code);
    }

    /** Runs a command on the given streams and gives its exit code. */
    static int run(Console console, String... args) {
        CommandLine commands = new CommandLine(Main.class, new CommandFactory(console))
                .registerConverter(YearMonth.class, Main::month)
                .setOut(writer(console.out().stream()))
                .setErr(writer(console.err().stream()))
                .setColorScheme(CommandLine.Help.defaultColorScheme(
                        console.out().colour() ? CommandLine.Help.Ansi.ON : CommandLine.Help.Ansi.OFF));
        return commands.execute(isDroppedFolder(commands, args) ? new String[] {"review", args[0]} : args);
    }

    /** A bar folder alone, as a desktop hands it over when it is dropped on the program, asks for its review. */
    private static boolean isDroppedFolder(CommandLine commands, String[] args) {
        return args.length == 1
                && !args[0].startsWith("-")
                && !commands.getSubcommands().containsKey(args[0])
                && new File(args[0]).isDirectory();
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }

    private static YearMonth month(String text) {
        try {
            return YearMonth.parse(text);
        } catch (DateTimeException notAMonth) {
            throw new TypeConversionException("'" + text + "' is no month such as 2026-10");
        }
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Name a command: review, check or start.");
    }
}
