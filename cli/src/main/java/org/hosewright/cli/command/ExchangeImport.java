package org.hosewright.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hosewright.cli.text.ExchangeText;
import org.hosewright.files.exchange.ExchangeFile;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.exchange.Fingerprint;
import org.hosewright.ledger.leaf.LeafSaving;
import org.hosewright.server.api.ExchangeDesk;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A neighbour's file, verified and laid beside what is ours; kept as theirs where that is asked for. */
@Command(
        name = "import",
        mixinStandardHelpOptions = true,
        description = "Verifies a neighbour's file and shows it beside ours; with --keep it is kept, as theirs.")
final class ExchangeImport implements Callable<Integer> {
    @Mixin
    private ExchangePlace place;

    @Mixin
    private Person person;

    @Parameters(paramLabel = "FILE.exchange", description = "The file as the neighbour made it.")
    private Path file;

    @Option(names = "--keep", description = "Keeps it beside the record as the neighbour's. Our kit is not touched.")
    private boolean keep;

    @Option(
            names = "--fingerprint",
            paramLabel = "\"3f2a 91c0 ...\"",
            description = "What the neighbour read out by telephone; needed at the first use of their key.")
    private @Nullable String fingerprint;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        byte[] bytes = read();
        record Done(ExchangeDesk.Looked looked, boolean kept, ExchangeText text) {}
        Done done = place.at(desk -> {
            ExchangeDesk.Looked looked = desk.look(bytes, String.valueOf(file.getFileName()));
            Optional<Fingerprint> told = OptionText.find("--fingerprint", fingerprint, Fingerprint::parse);
            if (keep) {
                requireSaved(desk.keep(looked.arrival(), told, person.act()));
            } else if (told.isPresent()) {
                looked.arrival().require(told);
            }
            return new Done(looked, keep, new ExchangeText(desk.kit().units(), desk.today()));
        });
        printing.print(
                () -> ResultJson.write(
                        ExchangeFile.fields(done.looked().arrival().signed())),
                () -> done.text().looked(done.looked(), done.kept()));
        return Exit.DONE.status();
    }

    private byte[] read() {
        if (!Files.isRegularFile(file)) {
            throw new InvalidInput("file", file.toString(), "a file that is there", "");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(ExchangeFile.LIMIT + 1);
        } catch (IOException e) {
            throw new UncheckedIOException("could not read " + file, e);
        }
    }

    static void requireSaved(LeafSaving saving) {
        if (saving instanceof LeafSaving.Conflict conflict) {
            throw new InvalidInput(
                    "neighbour",
                    "changed by " + conflict.stored().mark().who() + " in between",
                    "the same command again, after a look",
                    "");
        }
    }
}
