package heeltap.cli;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes the commands with the streams they talk to. */
public final class CommandFactory implements IFactory {
    private final Console console;

    /** For the build, which only asks what the commands are: what they print goes nowhere. */
    public CommandFactory() {
        this(silent());
    }

    CommandFactory(Console console) {
        this.console = console;
    }

    @Override
    public <K> K create(Class<K> type) throws Exception {
        if (type == ReviewCommand.class) {
            return type.cast(new ReviewCommand(console));
        } else if (type == CheckCommand.class) {
            return type.cast(new CheckCommand(console));
        } else if (type == StartCommand.class) {
            return type.cast(new StartCommand(console));
        } else if (type == CompletionCommand.class) {
            return type.cast(new CompletionCommand(console));
        }
        return CommandLine.defaultFactory().create(type);
    }

    private static Console silent() {
        Screen nowhere = Screen.plain(new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8));
        return new Console(nowhere, nowhere);
    }
}
