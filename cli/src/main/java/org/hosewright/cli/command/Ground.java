package org.hosewright.cli.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.files.track.TerrainFile;
import org.hosewright.files.walk.KnownLength;
import org.hosewright.ground.walk.EnteredRise;
import org.hosewright.ground.walk.MeasuredLength;
import org.hosewright.ground.walk.WalkQuestion;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.walk.KeptWalk;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What is known of the ground beside the track: its heights, a rise, a measured length. */
final class Ground {
    @Option(names = "--terrain", paramLabel = "FILE.hgt", description = "Heights of the ground; may be zipped.")
    private @Nullable Path terrain;

    @Option(names = "--up", paramLabel = "\"20 ft\"", description = "The end lies so much above the start.")
    private @Nullable String up;

    @Option(names = "--down", paramLabel = "\"8 ft\"", description = "The end lies so much below the start.")
    private @Nullable String down;

    @Option(
            names = "--measured",
            paramLabel = "\"340 ± 2 ft\"",
            description = "The whole way as taped, wheeled or by hose laid; ± is the standard error.")
    private @Nullable String measured;

    @Option(
            names = "--couplings-laid",
            description = "The couplings marked are those of hose laid, in order from the pump: each corrects the way.")
    private boolean couplingsLaid;

    Ground() {}

    WalkQuestion asked(WalkQuestion bare) {
        WalkQuestion question = bare;
        if (terrain != null) {
            question = question.withTerrain(TerrainFile.read(terrain));
        }
        Optional<EnteredRise> rise = KnownLength.rise(Optional.ofNullable(up), Optional.ofNullable(down));
        question = rise.map(question::withRise).orElse(question);
        List<MeasuredLength> lengths =
                new ArrayList<>(couplingsLaid ? KeptWalk.couplings(bare.track(), bare.section()) : List.of());
        int last = bare.track().fixes().size() - 1;
        OptionText.find("--measured", measured, KnownLength::of)
                .map(known -> measured(known, last))
                .ifPresent(lengths::add);
        return question.withMeasured(lengths);
    }

    private static MeasuredLength measured(Known<Length> known, int last) {
        return new MeasuredLength(
                known.value(), known.standardError().orElse(new Length(0)), MeasuredLength.By.TAPE, last);
    }
}
