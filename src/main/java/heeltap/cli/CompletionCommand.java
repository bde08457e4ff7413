package heeltap.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code heeltap completion}. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        description = {
            "Prints a script that completes commands and options on the Tab key.",
            "In bash or zsh: source <(heeltap completion)"
        })
final class CompletionCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    CompletionCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        console.out().stream().print(AutoComplete.bash("heeltap", spec.root().commandLine()));
        return ExitCode.DONE;
    }
}
