package clipwitness.cli;

/** Entry point of the command line. */
public final class Main {
    private Main() {}

    /**
     * Runs one command and leaves with its exit status.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        System.exit(2);
    }
}
