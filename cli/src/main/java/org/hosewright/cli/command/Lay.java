package org.hosewright.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hosewright.cli.text.LayText;
import org.hosewright.files.lay.LayFile;
import org.hosewright.files.plain.PlainText;
import org.hosewright.files.result.ResultJson;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Solves a lay: one line, or lines and wyes from one engine. */
@Command(
        name = "lay",
        mixinStandardHelpOptions = true,
        description = "What to pump for a lay, or what a pump pressure gives at its tips.")
public final class Lay implements Callable<Integer> {
    @Parameters(paramLabel = "LAY.yaml", description = "What is laid and what is asked of it.")
    private Path file;

    @Mixin
    private KitFile kit;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        Kit company = kit.read().kit();
        var laid = LayFile.readLaid(PlainText.read(file, PlainText.YAML_LIMIT), company, file.toString());
        var report = LayReport.of(company, laid, Optional.of(KitFile.today(company)));
        printing.print(() -> ResultJson.lay(report), () -> LayText.of(report));
        return Exit.DONE.status();
    }
}
