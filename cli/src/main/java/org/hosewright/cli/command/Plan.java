package org.hosewright.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.hosewright.cli.text.PlanText;
import org.hosewright.documents.Papers;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.evidence.plan.Budget;
import org.hosewright.evidence.plan.Optimality;
import org.hosewright.evidence.plan.Pace;
import org.hosewright.evidence.plan.Question;
import org.hosewright.files.plain.NewFile;
import org.hosewright.files.plan.BlankReadings;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.Seconds;
import org.hosewright.hydraulics.quantity.Volume;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.plan.PlanAnalysis;
import org.hosewright.ledger.plan.PlanAsked;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Plans a test night: the shortest list of readings that answers what is asked. */
@Command(
        name = "plan",
        mixinStandardHelpOptions = true,
        description = "The readings of a test night, checked beforehand: lengths, flows, order, water and time.")
public final class Plan implements Callable<Integer> {
    @Mixin
    private KitFile kit;

    @Option(names = "--package", required = true, paramLabel = "ID", description = "The package to fly.")
    private String named;

    @Option(
            names = "--ask",
            split = ",",
            defaultValue = "hose,piping,meter",
            paramLabel = "QUESTION",
            description = "What the night is for: hose, piping, nozzle, meter, gauges.")
    private Set<String> asked;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", description = "The night. Today if left out.")
    private @Nullable String date;

    @Option(names = "--hose", paramLabel = "\"800 ft\"", description = "How much there is of the package's last hose.")
    private @Nullable String onHand;

    @Option(names = "--rise", paramLabel = "\"8 ft\"", description = "The tip above the pump with all of it laid.")
    private @Nullable String rise;

    @Option(names = "--supply", paramLabel = "\"500 gpm\"", description = "The most that hydrant or tank gives.")
    private @Nullable String supply;

    @Option(
            names = "--with",
            split = ",",
            paramLabel = "INSTRUMENT",
            description = "The gauges and meters at hand. All of the kit if left out.")
    private @Nullable List<String> with;

    @Option(names = "--water", paramLabel = "\"4000 gal\"", description = "The water that may be used.")
    private @Nullable String water;

    @Option(
            names = "--time",
            defaultValue = "120 min",
            paramLabel = "\"120 min\"",
            description = "The time there is; 120 min if left out.")
    private String time;

    @Option(names = "--d-optimal", description = "Judge a list by all unknowns together, not by what is decided.")
    private boolean together;

    @Option(names = "--pdf", paramLabel = "FILE.pdf", description = "Write the sheets to take along.")
    private @Nullable Path pdf;

    @Option(names = "--readings", paramLabel = "FILE.csv", description = "Write the readings as a table to fill in.")
    private @Nullable Path readings;

    @Option(names = "--force", description = "Replace files that are there already.")
    private boolean force;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        Optional<Path> sheets = Optional.ofNullable(pdf);
        Optional<Path> table = Optional.ofNullable(readings);
        sheets.ifPresent(file -> NewFile.check(file, force));
        table.ifPresent(file -> NewFile.check(file, force));
        Kit company = kit.read().kit();
        var report = PlanAnalysis.of(company, question(company));
        sheets.ifPresent(file -> NewFile.write(file, Papers.night(report, Stamp.UNSIGNED), force));
        table.ifPresent(file -> NewFile.write(
                file, ReadingsFile.write(BlankReadings.of(report)).getBytes(StandardCharsets.UTF_8), force));
        printing.print(() -> ResultJson.plan(report), () -> PlanText.of(report));
        return Exit.DONE.status();
    }

    private PlanAsked question(Kit company) {
        Optional<Volume> most = OptionText.find("--water", water, QuantityText::volume);
        Seconds lasts = OptionText.find("--time", time, QuantityText::seconds).orElseThrow();
        return new PlanAsked(
                named,
                questions(),
                day(company),
                OptionText.find("--hose", onHand, QuantityText::length),
                OptionText.find("--rise", rise, QuantityText::length).orElse(new Length(0)),
                OptionText.find("--supply", supply, QuantityText::flow),
                with == null ? Optional.empty() : Optional.of(List.copyOf(with)),
                new Budget(lasts, most, Pace.USUAL),
                together ? Optimality.D : Optimality.I);
    }

    private Set<Question> questions() {
        Set<Question> questions = EnumSet.noneOf(Question.class);
        asked.forEach(word -> questions.add(Question.of(word)));
        return questions;
    }

    private LocalDate day(Kit company) {
        try {
            return date == null ? KitFile.today(company) : LocalDate.parse(date);
        } catch (DateTimeParseException wrong) {
            throw new InvalidInput("date of the night", wrong.getParsedString(), "a day such as 2026-05-12", "--date");
        }
    }
}
