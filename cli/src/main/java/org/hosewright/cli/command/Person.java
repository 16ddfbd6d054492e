package org.hosewright.cli.command;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Who does what a command does, as the history keeps it. */
final class Person {
    @Option(names = "--who", paramLabel = "NAME", description = "Who does this, for the history.")
    private @Nullable String who;

    @Option(names = "--why", paramLabel = "REASON", defaultValue = "", description = "Why, for the history.")
    private String why;

    Person() {}

    Act act() {
        if (who == null) {
            throw new InvalidInput("--who", "", "the name of who does this", "");
        }
        return new Act(who, why);
    }
}
