package org.hosewright.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hosewright.cli.text.LayText;
import org.hosewright.files.lay.LayFile;
import org.hosewright.files.lay.WhatIfText;
import org.hosewright.files.plain.PlainText;
import org.hosewright.files.result.ResultJson;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import org.hosewright.ledger.lay.LayWhatIf;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Solves a lay: one line, or lines and wyes from one engine. */
@Command(
        name = "lay",
        mixinStandardHelpOptions = true,
        description = "What to pump for a lay, or what a pump pressure gives at its tips.")
public final class Lay implements Callable<Integer> {
    @Parameters(paramLabel = "LAY.yaml", description = "What is laid and what is asked of it.")
    private Path file;

    @Option(
            names = "--what-if",
            paramLabel = "CHANGE",
            description = "What the gauges show if that happens and nobody touches the pump: 'a shuts', 'a opens',"
                    + " 'a tip fog-150', 'a burst 3', 'a kink 10 psi @ 100 gpm', 'a gate half', 'hydrant 75 %%'."
                    + " May be given several times.")
    private List<String> changes = List.of();

    @Mixin
    private KitFile kit;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        Kit company = kit.read().kit();
        var laid = LayFile.readLaid(PlainText.read(file, PlainText.YAML_LIMIT), company, file.toString());
        var today = Optional.of(KitFile.today(company));
        var report = LayReport.of(company, laid, today);
        var whatIf = changes.stream()
                .map(change -> LayWhatIf.of(report, WhatIfText.parse(change), today))
                .toList();
        printing.print(
                () -> whatIf.isEmpty() ? ResultJson.lay(report) : ResultJson.lay(report, whatIf),
                () -> LayText.of(report, whatIf));
        return Exit.DONE.status();
    }
}
