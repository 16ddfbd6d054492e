package org.hosewright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The one executable: its subcommands are the commands a training officer types. */
@Command(
        name = "hosewright",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Measured hose, honest numbers, and the cards a pump operator can trust.")
public final class Hosewright {
    private Hosewright() {}

    public static void main(String[] arguments) {
        var line = new CommandLine(new Hosewright());
        line.setOut(new PrintWriter(System.out, true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(System.err, true, StandardCharsets.UTF_8));
        System.exit(line.execute(arguments));
    }
}
