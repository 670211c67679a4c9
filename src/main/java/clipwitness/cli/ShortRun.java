package clipwitness.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A report of a few megabytes is finished before the optimising compiler saves more time than it takes: until then it only takes the second core from
 * the work. Such a run is handed to a virtual machine that compiles quickly, collects simply and has room for its classes, started with
 * the same command line. A long run, and one whose user has set such options, is not handed over.
 */
final class ShortRun {
    private static final long MOST_BYTES = 48L << 20;
    private static final int SECONDS_TO_END = 5;
    private static final int MOST_FILES = 4000;
    private static final List<String> SHORT_COMMANDS = List.of("report", "pair");
    private static final List<String> OPTIONS =
            List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:MetaspaceSize=96m");
    private static final List<String> OWN_CHOICE = List.of("-XX", "-Xint", "-Xcomp", "-agent", "-javaagent", "@");
    private static final List<String> OWN_CHOICE_VARIABLES =
            List.of("JDK_JAVA_OPTIONS", "JAVA_TOOL_OPTIONS", "_JAVA_OPTIONS");

    private ShortRun() {}

    /**
     * Runs the program once more in such a machine, where that pays.
     *
     * @param args the program's arguments
     * @return its exit status; empty where the run is not short, or such a machine cannot be started
     */
    static OptionalInt of(String... args) {
        boolean chosen = OWN_CHOICE_VARIABLES.stream().anyMatch(name -> System.getenv(name) != null);
        if (chosen || !isShort(args)) {
            return OptionalInt.empty();
        }
        ProcessHandle.Info self = ProcessHandle.current().info();
        return self.command()
                .flatMap(java -> self.arguments().flatMap(all -> command(java, List.of(all), List.of(args))))
                .map(ShortRun::exitStatus)
                .orElse(OptionalInt.empty());
    }

    /**
     * The command line of the other machine. Empty where this one's was not understood, or holds options of the user's own choice.
     *
     * @param java    the program that runs this machine
     * @param all     its arguments: the machine's options, the jar or class, the program's arguments
     * @param program the program's arguments
     */
    static Optional<List<String>> command(String java, List<String> all, List<String> program) {
        int own = all.size() - program.size();
        boolean understood = own > 0 && all.subList(own, all.size()).equals(program);
        if (!understood
                || all.subList(0, own).stream()
                        .anyMatch(a -> OWN_CHOICE.stream().anyMatch(a::startsWith))) {
            return Optional.empty();
        }
        List<String> command = new ArrayList<>(List.of(java));
        command.addAll(OPTIONS);
        command.add(ParentWatch.option());
        command.addAll(all);
        return Optional.of(command);
    }

    /** Whether the arguments ask for pairs, or for a report, of folders that hold little. */
    static boolean isShort(String... args) {
        if (args.length < 2 || !SHORT_COMMANDS.contains(args[0])) {
            return false;
        }
        long[] left = {MOST_BYTES, MOST_FILES};
        return Arrays.stream(args)
                .skip(1)
                .map(ShortRun::folder)
                .filter(Objects::nonNull)
                .allMatch(f -> fits(f, left));
    }

    private static Path folder(String argument) {
        try {
            Path path = Path.of(argument);
            return Files.isDirectory(path) ? path : null;
        } catch (InvalidPathException e) {
            return null;
        }
    }

    private static boolean fits(Path folder, long[] left) {
        try (Stream<Path> files = Files.walk(folder)) {
            Iterator<Path> each = files.iterator();
            while (each.hasNext() && left[0] >= 0 && left[1]-- > 0) {
                left[0] -= Files.size(each.next());
            }
            return !each.hasNext() && left[0] >= 0;
        } catch (IOException | UncheckedIOException e) {
            return false;
        }
    }

    private static OptionalInt exitStatus(List<String> command) {
        try {
            Process process = new ProcessBuilder(command).inheritIO().start();
            Runtime.getRuntime().addShutdownHook(new Thread(() -> end(process)));
            return OptionalInt.of(process.waitFor());
        } catch (IOException e) {
            return OptionalInt.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return OptionalInt.of(Clipwitness.TROUBLE);
        }
    }

    /** Ends the other machine with this one, and gives it a moment to put things in order. */
    private static void end(Process process) {
        process.destroy();
        try {
            process.waitFor(SECONDS_TO_END, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
