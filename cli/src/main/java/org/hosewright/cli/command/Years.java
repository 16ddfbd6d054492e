package org.hosewright.cli.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hosewright.cli.text.YearsText;
import org.hosewright.files.plain.PlainText;
import org.hosewright.files.readings.NightDate;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;
import org.hosewright.ledger.years.NightFlown;
import org.hosewright.ledger.years.YearsAnalysis;
import org.hosewright.ledger.years.YearsReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Weighs many test nights together. */
@Command(
        name = "years",
        mixinStandardHelpOptions = true,
        description = "What all test nights together say: hose by type and batch, what each night is worth, drift.")
public final class Years implements Callable<Integer> {
    @Parameters(paramLabel = "READINGS.csv", arity = "1..*", description = "The readings of each night.")
    private List<Path> files;

    @Mixin
    private KitFile kit;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        Kit has = kit.read().kit();
        YearsReport report = YearsAnalysis.of(
                has, files.stream().map(file -> night(file, has)).toList());
        printing.print(() -> ResultJson.years(report), () -> YearsText.of(report));
        return Exit.DONE.status();
    }

    private static NightFlown night(Path file, Kit kit) {
        String source = file.toString();
        var table = ReadingsFile.read(PlainText.read(file, PlainText.CSV_LIMIT), source);
        String full = String.valueOf(file.getFileName());
        String name = full.replaceFirst("(?<=.)\\..*", "");
        LocalDate date = NightDate.find(table, kit)
                .or(() -> Optional.ofNullable(kit.evidence().get(name)).flatMap(NightRecord::date))
                .orElseThrow(() -> new InvalidInput(
                        "day of the night",
                        "",
                        "a column 'time' with the day, as in 2026-05-12T19:10, or the night under 'evidence' in the kit",
                        source));
        return new NightFlown(source, name, date, ReadingParser.parse(table, kit, source), Map.of());
    }
}
