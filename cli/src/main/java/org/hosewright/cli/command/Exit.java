package org.hosewright.cli.command;

import java.io.IOException;
import java.net.BindException;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.error.NotConverged;
import org.hosewright.ledger.storage.StorageFailure;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The exit status of a command, which other programs may rely on. A broken limit is a result, not a failure. */
public enum Exit {
    DONE(0),
    /** The input was refused; nothing was kept. */
    REFUSED(1),
    USAGE(2),
    /** The computation has no answer. */
    NO_ANSWER(3),
    /** Storage, port or anything else of the machine failed. */
    MACHINE(4);

    private final int status;

    Exit(int status) {
        this.status = status;
    }

    public int status() {
        return status;
    }

    /** Says what was wrong with the words of the command. */
    public static int ofUsage(ParameterException wrong, String[] arguments) {
        var command = wrong.getCommandLine();
        command.getErr().println(wrong.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(wrong, command.getErr());
        command.getErr().println("See: " + command.getCommandSpec().qualifiedName() + " --help");
        return USAGE.status;
    }

    /** Says what stopped a command, in one sentence. */
    public static int ofFailure(Exception failure, CommandLine command, ParseResult arguments) {
        Exit exit = of(failure);
        command.getErr().println(sentence(failure));
        return exit.status;
    }

    private static Exit of(Throwable failure) {
        if (failure instanceof InvalidInput) {
            return REFUSED;
        }
        return failure instanceof NotConverged ? NO_ANSWER : MACHINE;
    }

    private static String sentence(Throwable failure) {
        boolean ours =
                failure instanceof InvalidInput || failure instanceof NotConverged || failure instanceof StorageFailure;
        if (ours) {
            return String.valueOf(failure.getMessage());
        }
        if (find(BindException.class, failure).isPresent()) {
            return "Another program holds that port; say another one: --port 0 takes a free one.";
        }
        return find(IOException.class, failure)
                .map(broken -> "A file cannot be read or written: " + broken.getMessage() + ".")
                .orElseGet(() -> "Hosewright failed at its own work: " + failure + ". Please report this.");
    }

    private static <T extends Throwable> Optional<T> find(Class<T> kind, Throwable failure) {
        for (@Nullable Throwable link = failure; link != null; link = link.getCause()) {
            if (kind.isInstance(link)) {
                return Optional.of(kind.cast(link));
            }
        }
        return Optional.empty();
    }
}
