package org.hosewright.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hosewright.cli.text.WalkText;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.plain.NewFile;
import org.hosewright.files.plain.PlainText;
import org.hosewright.files.result.ResultJson;
import org.hosewright.files.track.TrackFile;
import org.hosewright.ground.walk.WalkQuestion;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;
import org.hosewright.ledger.walk.WalkReport;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The ground that a walked track covers. */
@Command(
        name = "walk",
        mixinStandardHelpOptions = true,
        description =
                "How long a walked way is, how much it rises, where every section ends and what the pump must do there.")
public final class Walk implements Callable<Integer> {
    private static final Length US_SECTION = Length.ofFeet(50);
    private static final Length SI_SECTION = Length.ofMetres(25);

    @Parameters(paramLabel = "TRACK.gpx", description = "The walk: GPX 1.1 or GeoJSON.")
    private Path file;

    @Option(
            names = "--section",
            paramLabel = "\"50 ft\"",
            description = "From coupling to coupling. The package's own hose, or 50 ft, if left out.")
    private @Nullable String section;

    @ArgGroup(exclusive = false)
    private @Nullable Chosen chosen;

    @Mixin
    private Ground ground;

    @Option(names = "--out", paramLabel = "FILE", description = "Writes the way with its marks as .gpx or .geojson.")
    private @Nullable Path out;

    @Option(names = "--force", description = "Replaces the file of --out if it is there.")
    private boolean force;

    @Mixin
    private Printing printing;

    /** A package of a kit; both are said or neither. */
    static final class Chosen {
        @Option(names = "--kit", required = true, paramLabel = "KIT.yaml", description = "What the company has.")
        private Path kit;

        @Option(names = "--package", required = true, paramLabel = "ID", description = "The line that is laid.")
        private String id;

        Chosen() {}
    }

    @Override
    public Integer call() {
        Optional<Path> wanted = Optional.ofNullable(out);
        Optional<TrackFile.Form> form = wanted.map(path -> TrackFile.Form.of(path.toString()));
        wanted.ifPresent(path -> NewFile.check(path, force));
        Optional<Kit> kit = Optional.ofNullable(chosen)
                .map(named -> KitDocument.of(PlainText.read(named.kit, PlainText.YAML_LIMIT), named.kit.toString())
                        .kit());
        WalkReport report = report(kit);
        if (wanted.isPresent() && form.isPresent()) {
            NewFile.write(wanted.get(), TrackFile.write(report, form.get()), force);
            printing.remark("The way with its marks is in " + wanted.get() + ".");
        }
        printing.print(() -> ResultJson.walk(report), () -> WalkText.of(report));
        return Exit.DONE.status();
    }

    private WalkReport report(Optional<Kit> kit) {
        UnitSystem units = kit.map(Kit::units).orElse(units());
        var question = ground.asked(WalkQuestion.of(TrackFile.read(file), section(kit, units)));
        var walk = org.hosewright.ground.walk.Walk.of(question);
        if (kit.isEmpty() || chosen == null) {
            return WalkReport.of(walk, units);
        }
        return WalkReport.of(walk, kit.get(), chosen.id, Optional.of(KitFile.today(kit.get())));
    }

    private Length section(Optional<Kit> kit, UnitSystem units) {
        return OptionText.find("--section", section, QuantityText::length)
                .or(() -> kit.flatMap(this::ownSection))
                .orElse(units == UnitSystem.US ? US_SECTION : SI_SECTION);
    }

    /** The section of the last hose of the package. */
    private Optional<Length> ownSection(Kit kit) {
        return Optional.ofNullable(chosen)
                .map(named -> kit.packages().get(named.id))
                .map(named -> KitLines.hose(
                                kit, named.hose().get(named.hose().size() - 1).hose())
                        .section());
    }

    /** Without a kit the section's own unit tells how results are shown. */
    private UnitSystem units() {
        boolean metric = section != null && section.strip().endsWith("m");
        return metric ? UnitSystem.SI : UnitSystem.US;
    }
}
