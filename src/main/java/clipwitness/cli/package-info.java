/**
 * The command line: one file a command, console and exit status. Handles what the user typed; does not measure.
 */
package clipwitness.cli;
