package org.hosewright.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hosewright.cli.text.DrillText;
import org.hosewright.documents.Papers;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.files.kit.KitAcceptance;
import org.hosewright.files.kit.KitAcceptance.Accepted;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.plain.NewFile;
import org.hosewright.files.plain.PlainText;
import org.hosewright.files.readings.NightDate;
import org.hosewright.files.readings.ReadingParser;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.error.NotConverged;
import org.hosewright.ledger.drill.DrillAnalysis;
import org.hosewright.ledger.drill.DrillReport;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Reads, checks and analyses a test night. */
@Command(
        name = "drill",
        mixinStandardHelpOptions = true,
        description = "What a test night showed: losses, meter, the present rule, what was set aside.")
public final class Drill implements Callable<Integer> {
    @Parameters(paramLabel = "READINGS.csv", description = "The night's readings.")
    private Path readings;

    @Mixin
    private KitFile kit;

    @Option(
            names = "--accept",
            paramLabel = "NEW.yaml",
            description = "Write the kit with the numbers that the night determined.")
    private @Nullable Path accept;

    @Option(names = "--report", paramLabel = "FILE.pdf", description = "Write the report of the night.")
    private @Nullable Path paper;

    @Option(names = "--force", description = "Replace files that are there already.")
    private boolean force;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        Optional<Path> newKit = Optional.ofNullable(accept);
        Optional<Path> newPaper = Optional.ofNullable(paper);
        newKit.ifPresent(file -> NewFile.check(file, force));
        newPaper.ifPresent(file -> NewFile.check(file, force));
        KitDocument document = kit.read();
        DrillReport report = analyse(document);
        Optional<byte[]> pages = newPaper.map(file -> Papers.drillReport(report, Stamp.UNSIGNED));
        newKit.ifPresent(file -> writeKit(file, document, report));
        newPaper.ifPresent(file -> NewFile.write(file, pages.orElseThrow(), force));
        printing.print(() -> ResultJson.drill(report), () -> DrillText.of(report));
        return Exit.DONE.status();
    }

    private DrillReport analyse(KitDocument document) {
        String source = readings.toString();
        var table = ReadingsFile.read(PlainText.read(readings, PlainText.CSV_LIMIT), source);
        var rows = ReadingParser.parse(table, document.kit(), source);
        var date = NightDate.find(table, document.kit());
        try {
            return DrillAnalysis.of(nightName(), date, document.kit(), rows, Map.of());
        } catch (InvalidInput impossible) {
            throw table.placed(impossible, source);
        }
    }

    /** The file's name up to its first point: "drill-night" of "drill-night.readings.csv". */
    private String nightName() {
        String name = String.valueOf(readings.getFileName());
        int point = name.indexOf('.');
        return point > 0 ? name.substring(0, point) : name;
    }

    private void writeKit(Path file, KitDocument before, DrillReport report) {
        Accepted accepted = KitAcceptance.of(before, report);
        if (accepted.taken().isEmpty()) {
            throw new NotConverged("This night determines no number, so no kit was written.", readings.toString());
        }
        NewFile.write(file, accepted.document().text().getBytes(StandardCharsets.UTF_8), force);
        printing.remark("Written to " + file + ":");
        accepted.taken()
                .forEach(taken -> printing.remark("  " + String.join(" ", taken.path()) + ": "
                        + (taken.was().isEmpty() ? "" : taken.was() + " -> ") + taken.now()));
    }
}
