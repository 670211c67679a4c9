/**
 * The command line: one file a command, console and exit status. Knows what the user typed, nothing about waves.
 */
package clipwitness.cli;
