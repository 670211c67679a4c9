package clipwitness.cli;

import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The commands as a manual page in the language of man(7). */
final class Roff {
    private final StringBuilder page = new StringBuilder();

    private Roff() {}

    static String of(CommandLine commands, String version) {
        Roff roff = new Roff();
        CommandSpec root = commands.getCommandSpec();
        roff.line(".TH CLIPWITNESS 1 \"\" \"clipwitness " + version + "\" \"User commands\"");
        roff.line(".SH NAME");
        roff.line("clipwitness \\- " + text(String.join(" ", root.usageMessage().description())));
        roff.line(".SH SYNOPSIS");
        commands.getSubcommands()
                .forEach((name, command) -> roff.line(".B clipwitness " + name + "\n[options] "
                        + text(parameters(command.getCommandSpec())) + "\n.br"));
        commands.getSubcommands().values().forEach(c -> roff.command(c.getCommandSpec()));
        roff.line(".SH EXIT STATUS");
        roff.line(
                text(
                        "0: done, and nothing judged failed or stayed undecided. 1: something judged did, captures are not"
                                + " good enough, or a report does not match its data. 2: wrong usage, or something could not be read or reported."));
        roff.line(".SH ENVIRONMENT");
        roff.term("JAVA_HOME", "the Java that is used, where the program has none of its own");
        roff.term("CLIPWITNESS_JAVA", "another java program");
        roff.term("CLIPWITNESS_OPTS", "more options of Java, -Xmx8g for instance");
        return roff.page.toString();
    }

    private void command(CommandSpec command) {
        line(".SH " + text(command.name().toUpperCase(java.util.Locale.ROOT)));
        for (String description : command.usageMessage().description()) {
            line(text(description));
            line(".PP");
        }
        for (PositionalParamSpec p : command.positionalParameters()) {
            term(p.paramLabel(), description(p));
        }
        for (OptionSpec o : command.options()) {
            String value = o.arity().max() > 0 ? " " + o.paramLabel() : "";
            term(String.join(", ", o.names()) + value, description(o));
        }
    }

    /** The parameters in the words of the usage: {@code REPORT.pdf [JOB]}. */
    private static String parameters(CommandSpec command) {
        return command.positionalParameters().stream()
                .map(p -> p.arity().min() == 0
                        ? "[" + p.paramLabel() + "]"
                        : p.paramLabel() + (p.arity().max() > 1 ? "..." : ""))
                .collect(Collectors.joining(" "));
    }

    private static String description(ArgSpec argument) {
        String shown = String.join(" ", argument.description());
        return shown.replace("${DEFAULT-VALUE}", String.valueOf(argument.defaultValue()));
    }

    private void term(String term, String meaning) {
        line(".TP\n.B " + text(term));
        line(text(meaning));
    }

    private void line(String line) {
        page.append(line).append('\n');
    }

    /** A text whose signs mean themselves. */
    private static String text(String plain) {
        String escaped = plain.replace("\\", "\\e").replace("-", "\\-");
        return List.of('.', '\'').contains(escaped.isEmpty() ? ' ' : escaped.charAt(0)) ? "\\&" + escaped : escaped;
    }
}
