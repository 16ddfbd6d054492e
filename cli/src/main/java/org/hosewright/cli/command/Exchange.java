package org.hosewright.cli.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Packages handed to mutual-aid neighbours and taken from them, as small signed files. */
@Command(
        name = "exchange",
        mixinStandardHelpOptions = true,
        subcommands = {
            ExchangeKey.class,
            ExchangeExport.class,
            ExchangeImport.class,
            ExchangeNeighbours.class,
        },
        description = "Hand packages to a neighbour as a small signed file, and look at what a neighbour handed over.")
public final class Exchange implements Runnable {
    @Spec
    private CommandSpec spec;

    Exchange() {}

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: key, export, import or neighbours.");
    }
}
