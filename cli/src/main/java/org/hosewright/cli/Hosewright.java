package org.hosewright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.hosewright.cli.command.Accounts;
import org.hosewright.cli.command.AuditChain;
import org.hosewright.cli.command.Backup;
import org.hosewright.cli.command.Blind;
import org.hosewright.cli.command.Cards;
import org.hosewright.cli.command.CheckStore;
import org.hosewright.cli.command.Drill;
import org.hosewright.cli.command.Exchange;
import org.hosewright.cli.command.Exit;
import org.hosewright.cli.command.Lay;
import org.hosewright.cli.command.Plan;
import org.hosewright.cli.command.Reach;
import org.hosewright.cli.command.Restore;
import org.hosewright.cli.command.Serve;
import org.hosewright.cli.command.Trial;
import org.hosewright.cli.command.Walk;
import org.hosewright.cli.command.Years;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The one executable: its subcommands are the commands a training officer types. */
@Command(
        name = "hosewright",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        subcommands = {
            Serve.class,
            Accounts.class,
            Drill.class,
            Years.class,
            Lay.class,
            Plan.class,
            Reach.class,
            Cards.class,
            Walk.class,
            Blind.class,
            Trial.class,
            Exchange.class,
            AuditChain.class,
            CheckStore.class,
            Backup.class,
            Restore.class
        },
        description = "Measured hose, honest numbers, and the cards a pump operator can trust.")
public final class Hosewright implements Runnable {
    @Spec
    private CommandSpec spec;

    Hosewright() {}

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do.");
    }

    /** The command line, writing to the given ends. */
    public static CommandLine commandLine(PrintWriter out, PrintWriter err) {
        return new CommandLine(new Hosewright())
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(Exit::ofUsage)
                .setExecutionExceptionHandler(Exit::ofFailure);
    }

    public static void main(String[] arguments) {
        var out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        var err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(commandLine(out, err).execute(arguments));
    }
}
