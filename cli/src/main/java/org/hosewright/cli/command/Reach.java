package org.hosewright.cli.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.hosewright.cli.text.ReachText;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.reach.ReachAnalysis;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The longest stretch of each package and what stops it. */
@Command(
        name = "reach",
        mixinStandardHelpOptions = true,
        description = "How far each package goes, in whole sections, and what stops it.")
public final class Reach implements Callable<Integer> {
    @Mixin
    private KitFile kit;

    @Option(
            names = "--rise",
            paramLabel = "\"20 ft\"",
            description = "The tip above the pump; negative downhill. Level if left out.")
    private @Nullable String rise;

    @Option(
            names = "--ceiling",
            paramLabel = "\"225 psi\"",
            description = "The highest pump pressure. Each engine's own if left out.")
    private @Nullable String ceiling;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        Kit company = kit.read().kit();
        Length up = OptionText.find("--rise", rise, QuantityText::length).orElse(new Length(0));
        Optional<Pressure> most = OptionText.find("--ceiling", ceiling, QuantityText::pressure);
        var question = new ReachAnalysis.Question(up, most, Optional.of(KitFile.today(company)));
        var report = ReachAnalysis.of(company, question);
        printing.print(() -> ResultJson.reach(report), () -> ReachText.of(report));
        return Exit.DONE.status();
    }
}
