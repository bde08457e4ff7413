package heeltap.cli;

/**
 * The streams a command talks to.
 *
 * @param out results
 * @param err notices and progress
 */
record Console(Screen out, Screen err) {}
