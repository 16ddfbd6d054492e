package org.hosewright.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hosewright.cli.text.ExchangeText;
import org.hosewright.files.exchange.ExchangeFile;
import org.hosewright.files.plain.NewFile;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.exchange.SignedHandover;
import org.hosewright.server.api.ExchangeDesk;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Hands packages of the order in force to neighbours, as one signed file. */
@Command(
        name = "export",
        mixinStandardHelpOptions = true,
        description = "Writes packages of the order in force into a signed file for neighbours.")
final class ExchangeExport implements Callable<Integer> {
    @Mixin
    private ExchangePlace place;

    @Mixin
    private Person person;

    @Option(
            names = "--package",
            paramLabel = "ID",
            description = "A package to hand over; may be said again. All that are ready if left out.")
    private List<String> packages = new ArrayList<>();

    @Option(
            names = "--until",
            paramLabel = "2027-05-12",
            description = "The last day that the figures are to be used. A year from today if left out.")
    private @Nullable String until;

    @Option(names = "--withdraw", description = "Takes back all that was handed over before; say --why.")
    private boolean withdraw;

    @Option(
            names = "--new-key",
            description = "The key of the last file is lost: from now on this machine's; neighbours must confirm it.")
    private boolean newKey;

    @Option(names = "--out", required = true, paramLabel = "FILE.exchange", description = "The file to write.")
    private Path out;

    @Option(names = "--force", description = "Replaces the file if it is there.")
    private boolean force;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        NewFile.check(out, force);
        SignedHandover signed = place.at(this::hand);
        NewFile.write(out, signed.text().getBytes(StandardCharsets.UTF_8), force);
        printing.print(() -> ResultJson.write(ExchangeFile.fields(signed)), () -> ExchangeText.handed(signed, out));
        return Exit.DONE.status();
    }

    private SignedHandover hand(ExchangeDesk desk) {
        if (newKey) {
            desk.letGoOfKey(person.act());
        }
        if (withdraw) {
            return desk.withdraw(person.act());
        }
        return desk.handOver(packages, Optional.ofNullable(until).map(ExchangeExport::day), person.act());
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new InvalidInput("--until", text, "a day as in 2027-05-12", "");
        }
    }
}
