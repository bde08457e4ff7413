package heeltap.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * Manual pages of all commands, in the macros of man(7), and the completion script: both from the commands themselves.
 * The build runs it.
 */
public final class ManualPages {
    private static final String NEW_PARAGRAPH = ".PP\n";

    private ManualPages() {}

    /**
     * Writes {@code heeltap.1}, a page for each command, and {@code heeltap.bash}.
     *
     * @param args the folder to write to
     */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        CommandLine commands = new CommandLine(Main.class, new CommandFactory());
        Files.writeString(folder.resolve("heeltap.bash"), AutoComplete.bash("heeltap", commands));
        write(commands, folder);
        for (CommandLine command : commands.getSubcommands().values()) {
            write(command, folder);
        }
    }

    private static void write(CommandLine command, Path folder) throws IOException {
        String name = command.getCommandSpec().qualifiedName("-");
        Files.writeString(folder.resolve(name + ".1"), page(command), StandardCharsets.UTF_8);
    }

    /** One page in roff. */
    static String page(CommandLine command) {
        CommandSpec spec = command.getCommandSpec();
        List<String> description = Arrays.asList(spec.usageMessage().description());
        String name = spec.qualifiedName("-");
        StringBuilder page = new StringBuilder(
                ".TH " + name.toUpperCase(Locale.ROOT) + " 1 \"\" \"" + Main.VERSION + "\" \"Heeltap\"\n");
        page.append(".SH NAME\n")
                .append(text(name))
                .append(" \\- ")
                .append(text(description.get(0)))
                .append('\n');
        String synopsis = command.getHelp().synopsis(0).replaceAll("\\s+", " ").strip();
        page.append(".SH SYNOPSIS\n").append(text(synopsis)).append('\n');
        page.append(".SH DESCRIPTION\n").append(paragraphs(description));
        page.append(".SH OPTIONS\n");
        for (OptionSpec option : spec.options()) {
            page.append(tagged(names(option), option.description()));
        }
        if (!spec.positionalParameters().isEmpty()) {
            page.append(".SH ARGUMENTS\n");
        }
        for (PositionalParamSpec argument : spec.positionalParameters()) {
            page.append(tagged(argument.paramLabel(), argument.description()));
        }
        page.append(commands(command));
        if (spec.usageMessage().footer().length > 0) {
            page.append(".SH NOTES\n")
                    .append(paragraphs(Arrays.asList(spec.usageMessage().footer())));
        }
        return page.toString();
    }

    private static String commands(CommandLine command) {
        StringBuilder list = new StringBuilder();
        command.getSubcommands()
                .forEach((name, sub) -> list.append(tagged(
                        command.getCommandName() + "-" + name + "(1)",
                        sub.getCommandSpec().usageMessage().description())));
        return list.isEmpty() ? "" : ".SH COMMANDS\n" + list;
    }

    private static String names(OptionSpec option) {
        String names = String.join(", ", option.names());
        return option.arity().max() == 0 ? names : names + "=" + option.paramLabel();
    }

    private static String tagged(String tag, String[] description) {
        return ".TP\n.B " + text(tag) + "\n" + text(plain(description[0])) + "\n";
    }

    private static String paragraphs(List<String> paragraphs) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : paragraphs) {
            if (!paragraph.isEmpty()) {
                lines.add(text(plain(paragraph)) + "\n");
            }
        }
        return String.join(NEW_PARAGRAPH, lines);
    }

    /** Without the marks for colour and the doubled percent signs of the command model. */
    private static String plain(String text) {
        return Ansi.OFF.string(text.replace("%%", "%").replace("%n", " "));
    }

    /** A backslash, a hyphen, and a dot or apostrophe at the start of a line mean something to roff. */
    private static String text(String text) {
        String escaped = text.replace("\\", "\\e").replace("-", "\\-");
        return escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" + escaped : escaped;
    }
}
