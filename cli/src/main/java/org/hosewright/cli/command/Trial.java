package org.hosewright.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.hosewright.cli.text.TrialText;
import org.hosewright.evidence.trial.Measure;
import org.hosewright.evidence.trial.Relay;
import org.hosewright.evidence.trial.Stake;
import org.hosewright.evidence.trial.TrialResult;
import org.hosewright.evidence.trial.TrialWords;
import org.hosewright.files.plain.PlainText;
import org.hosewright.files.relays.RelaysFile;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What the re-lays of a blind trial say of its hoses or nozzles. */
@Command(
        name = "trial",
        mixinStandardHelpOptions = true,
        description = "Whether hoses or nozzles laid blind really differ: a verdict that the re-lays carry, or none.")
public final class Trial implements Callable<Integer> {
    @Parameters(
            paramLabel = "RELAYS.csv",
            description = "Heads: label, lay, and one of loss [psi], loss [kPa], flow [gpm], flow [L/min].")
    private Path file;

    @Option(names = "--over", paramLabel = "\"300 ft\"", required = true, description = "Length of hose in the trial.")
    private String over;

    @Option(
            names = "--longest",
            paramLabel = "\"600 ft\"",
            required = true,
            description = "The longest stretch that you would lay.")
    private String longest;

    @Option(
            names = "--matters",
            paramLabel = "\"10 psi\"",
            description =
                    "The difference that changes what you do, for a loss at the longest stretch. 10 psi or 10 gpm if left out.")
    private @Nullable String matters;

    @Option(
            names = "--step",
            paramLabel = "\"1 psi\"",
            description = "The finest step that was read. None if left out.")
    private @Nullable String step;

    @Option(names = "--units", paramLabel = "us|si", defaultValue = "us", description = "Units of the answer.")
    private UnitSystem units;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        RelaysFile read = RelaysFile.read(PlainText.read(file, PlainText.CSV_LIMIT), file.toString());
        TrialResult result = TrialResult.of(stake(read.measure()), labels(read), read.relays());
        var out = spec.commandLine().getOut();
        TrialText.of(result, new TrialWords(units, Map.of())).forEach(out::println);
        out.flush();
        return Exit.DONE.status();
    }

    private static List<String> labels(RelaysFile read) {
        return read.relays().stream().map(Relay::label).distinct().sorted().toList();
    }

    private Stake stake(Measure measure) {
        Function<String, Quantity> reader = measure == Measure.LOSS ? QuantityText::pressure : QuantityText::flow;
        Quantity usual = measure == Measure.LOSS ? Pressure.ofPsi(Stake.MATTERS_PSI) : Flow.ofGpm(Stake.MATTERS_GPM);
        Length here = OptionText.read("--over", over, QuantityText::length);
        Length most = OptionText.read("--longest", longest, QuantityText::length);
        double least = Optional.ofNullable(matters)
                .map(text -> OptionText.read("--matters", text, reader))
                .orElse(usual)
                .si();
        double fine = Optional.ofNullable(step)
                .map(text -> OptionText.read("--step", text, reader).si())
                .orElse(0.0);
        return new Stake(measure, here, most, least, fine);
    }
}
