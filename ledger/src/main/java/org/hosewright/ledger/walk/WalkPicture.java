package org.hosewright.ledger.walk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.profile.GroundAt;
import org.hosewright.hydraulics.profile.LineProfile;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.picture.PictureLimits;

/** A package's line along a way that was walked, drawn as a line profile over its ground. */
public final class WalkPicture {
    /** More points of the ground than this are no picture of it [1]. */
    private static final int MOST_POINTS = 200;

    private WalkPicture() {}

    /** The profile with the tip at a section's end; absent where the package's earlier hoses already reach further.
     *
     * @param named the package that the walk is reported with
     * @param today the day that ages of tests are taken at
     */
    public static Optional<LineProfile> of(
            WalkReport report, Kit kit, HosePackage named, SectionThere there, Optional<LocalDate> today) {
        Laying laying = new Laying(report.walk(), kit, named, OrderedFigures.NONE, today);
        return laying.findLine(there.mark())
                .map(line -> LineProfile.of(line, laying.errors(), laying.duty().ask(), kit.units())
                        .withGround(ground(report, line.length()))
                        .withLimits(PictureLimits.of(kit, laying.bounds().ceiling(), chain(line))));
    }

    private static List<Stretch> chain(Line line) {
        return line.runs().stream()
                .map(run -> new Stretch(run.hose().id(), run.length()))
                .toList();
    }

    private static List<GroundAt> ground(WalkReport report, Length length) {
        GroundLine ground = new GroundLine(report.walk().way());
        int points = Math.min(MOST_POINTS, Math.max(2, report.walk().way().size()));
        return java.util.stream.IntStream.range(0, points)
                .mapToDouble(i -> length.metres() * i / (points - 1))
                .mapToObj(at_m -> new GroundAt(new Length(at_m), new Length(ground.height_m(at_m))))
                .toList();
    }
}
