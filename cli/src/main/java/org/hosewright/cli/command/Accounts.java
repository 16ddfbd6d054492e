package org.hosewright.cli.command;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.person.People;
import org.hosewright.ledger.person.Person;
import org.hosewright.ledger.person.PersonDraft;
import org.hosewright.server.password.Passwords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The people with accounts, from the machine that keeps the record: also the way back in for one who forgot. */
@Command(
        name = "people",
        mixinStandardHelpOptions = true,
        description = "Who has an account. Works on the machine that keeps the record, while the server is stopped.")
public final class Accounts implements Runnable {
    private static final String PIPED = "--password-stdin";
    private static final String PIPED_SAYS = "Read the password from standard input instead of asking for it.";
    private static final String AT_THE_MACHINE = "at the machine that keeps the record";

    @Spec
    private CommandSpec spec;

    @Mixin
    private RecordPlace place;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: list, add or password.");
    }

    @Command(name = "list", mixinStandardHelpOptions = true, description = "Who has an account, with which hats.")
    int list() {
        try (var store = place.open(false, Clock.systemUTC())) {
            List<Person> people = store.people().list();
            people.forEach(person -> say(line(person)));
            if (people.isEmpty()) {
                say("Nobody has an account.");
            }
        }
        return Exit.DONE.status();
    }

    @Command(
            name = "add",
            mixinStandardHelpOptions = true,
            description = "Makes an account; the first one owns the record.")
    int add(
            @Parameters(paramLabel = "NAME", description = "As the record shall know the person.") String name,
            @Option(
                            names = "--hats",
                            paramLabel = "HAT",
                            split = ",",
                            description =
                                    "recorder, analyst, approver, apparatus officer, operator, owner; without it all"
                                            + " of them.")
                    List<String> hats,
            @Option(names = PIPED, description = PIPED_SAYS) boolean piped)
            throws IOException {
        try (var store = place.open(false, Clock.systemUTC())) {
            People people = store.people();
            var draft = PersonDraft.of(name, hats(hats));
            boolean given = people.isAnyone();
            var secret = new Passwords().secret(typed("Password for " + draft.name(), piped), draft.name(), given);
            String who = given ? AT_THE_MACHINE : draft.name();
            Person added = people.add(draft, secret, new Act(who, ""));
            say("Made: " + line(added));
            if (given) {
                say("At the first sign-in " + added.name() + " chooses another password.");
            }
        }
        return Exit.DONE.status();
    }

    @Command(
            name = "password",
            mixinStandardHelpOptions = true,
            description = "Gives a person another password, to be changed at the next sign-in.")
    int password(
            @Parameters(paramLabel = "NAME") String name,
            @Option(names = PIPED, description = PIPED_SAYS) boolean piped)
            throws IOException {
        try (var store = place.open(false, Clock.systemUTC())) {
            Person person = store.people()
                    .findKnown(name)
                    .orElseThrow(() -> new InvalidInput("name of the person", name, "one who has an account", ""))
                    .person();
            var secret = new Passwords().secret(typed("New password for " + person.name(), piped), person.name(), true);
            store.people().changeSecret(person.id(), secret, new Act(AT_THE_MACHINE, "forgotten"));
            say("At the next sign-in " + person.name() + " chooses another password.");
        }
        return Exit.DONE.status();
    }

    private static Set<Hat> hats(List<String> words) {
        return words == null
                ? EnumSet.allOf(Hat.class)
                : words.stream().map(String::strip).map(Hat::of).collect(Collectors.toSet());
    }

    private static String typed(String prompt, boolean piped) throws IOException {
        if (piped) {
            var in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
            return Optional.ofNullable(in.readLine())
                    .orElseThrow(() -> new InvalidInput("password", "", "one line on standard input", ""));
        }
        Console console = Optional.ofNullable(System.console())
                .orElseThrow(() -> new InvalidInput(
                        "password",
                        "no terminal to type it at",
                        "--password-stdin, and one line on standard input",
                        ""));
        char[] first = console.readPassword("%s: ", prompt);
        char[] again = console.readPassword("The same again: ");
        if (first == null || !Arrays.equals(first, again)) {
            throw new InvalidInput("password", "two that differ", "the same one twice", "");
        }
        return new String(first);
    }

    private static String line(Person person) {
        var words = new ArrayList<String>();
        person.hats().stream().sorted().map(Hat::word).forEach(words::add);
        return person.name() + ": " + String.join(", ", words) + (person.active() ? "" : " (may not sign in)");
    }

    private void say(String line) {
        spec.commandLine().getOut().println(line);
        spec.commandLine().getOut().flush();
    }
}
