package clipwitness.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Names an option that a command does not know, where the library names only the argument that is missing beside it. */
final class UnknownOption {
    private UnknownOption() {}

    /** The fault to be reported. */
    static ParameterException insteadOf(ParameterException fault) {
        CommandLine command = fault.getCommandLine();
        List<String> unknown = command.getUnmatchedArguments().stream()
                .filter(a -> a.startsWith("-"))
                .toList();
        return fault instanceof MissingParameterException && !unknown.isEmpty()
                ? new UnmatchedArgumentException(command, unknown)
                : fault;
    }
}
