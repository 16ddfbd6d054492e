package org.hosewright.ledger.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.ground.stretch.StretchRecord;
import org.hosewright.ground.terrain.Terrain;
import org.hosewright.ground.track.MarkKind;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.track.TrackMark;
import org.hosewright.ground.walk.EnteredRise;
import org.hosewright.ground.walk.MeasuredLength;
import org.hosewright.ground.walk.Walk;
import org.hosewright.ground.walk.WalkQuestion;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;

/** A walk as the company keeps it: what was recorded, untouched, and what people know beside it.
 *
 * @param name what people call it; not blank
 * @param track the recorded file, character for character: GPX 1.1 or GeoJSON
 * @param hosePackage id of the package that it was walked for, where one was chosen
 * @param measured the whole way as taped, wheeled or by hose laid, where it was
 * @param by what it was measured with; the tape where nothing was measured
 * @param pictures ids of photographs of the way
 * @param couplingsLaid true where the couplings that were marked are those of hose laid, in order from the pump
 * @param rise the end above the start as entered by hand, where it was
 */
public record KeptWalk(
        String name,
        String track,
        Optional<String> hosePackage,
        Optional<Known<Length>> measured,
        MeasuredLength.By by,
        List<String> pictures,
        boolean couplingsLaid,
        Optional<EnteredRise> rise) {
    /** A coupling is marked within some paces of it [m]; from common practice. */
    private static final double TAPPED_m = 1.5;

    public KeptWalk {
        pictures = List.copyOf(pictures);
        if (name.isBlank()) {
            throw new InvalidInput("name of the walk", name, "a name", "");
        }
    }

    /** The same walk corrected by a length that was measured. */
    public KeptWalk withMeasured(Known<Length> length, MeasuredLength.By with) {
        return new KeptWalk(name, track, hosePackage, Optional.of(length), with, pictures, couplingsLaid, rise);
    }

    /** The same walk with one more photograph. */
    public KeptWalk withPicture(String id) {
        List<String> more = new ArrayList<>(pictures);
        more.add(id);
        return new KeptWalk(name, track, hosePackage, measured, by, more, couplingsLaid, rise);
    }

    /** The way.
     *
     * @param read what {@link #track} holds
     * @param section from coupling to coupling
     * @param terrain heights of the ground there, where they are known
     */
    public Walk walk(Track read, Length section, Optional<Terrain> terrain) {
        List<MeasuredLength> lengths = new ArrayList<>(couplingsLaid ? couplings(read, section) : List.of());
        int last = read.fixes().size() - 1;
        measured.ifPresent(known -> lengths.add(
                new MeasuredLength(known.value(), known.standardError().orElse(new Length(0)), by, last)));
        return Walk.of(question(read, section, terrain).withMeasured(lengths));
    }

    private WalkQuestion question(Track read, Length section, Optional<Terrain> terrain) {
        WalkQuestion question = WalkQuestion.of(read, section);
        question = terrain.map(question::withTerrain).orElse(question);
        return rise.map(question::withRise).orElse(question);
    }

    /** The couplings that were marked, each one section further along the hose than the one before. */
    public static List<MeasuredLength> couplings(Track read, Length section) {
        List<MeasuredLength> lengths = new ArrayList<>();
        int count = 0;
        for (TrackMark mark : read.marks()) {
            if (mark.kind() == MarkKind.COUPLING) {
                count++;
                Length hose = new Length(count * section.metres());
                lengths.add(new MeasuredLength(hose, new Length(TAPPED_m), MeasuredLength.By.HOSE_LAID, mark.at()));
            }
        }
        return lengths;
    }

    /** Hose laid along the whole way against the way as walked; absent where no hose was laid along it.
     *
     * @param section from coupling to coupling
     */
    public Optional<StretchRecord> findRecord(Track read, Length section) {
        if (by != MeasuredLength.By.HOSE_LAID || measured.isEmpty()) {
            return Optional.empty();
        }
        Known<Length> way = Walk.of(WalkQuestion.of(read, section)).distance();
        Known<Length> hose = measured.get();
        boolean isWay = way.value().metres() > 0 && way.standardError().isPresent();
        return isWay
                ? Optional.of(new StretchRecord(way.value(), hose.value(), Math.hypot(share(way), share(hose))))
                : Optional.empty();
    }

    private static double share(Known<Length> known) {
        return known.standardErrorSi() / known.value().metres();
    }

    /** What the track's own name says where the person gave none. */
    public static String name(String given, Track read) {
        List<String> names = List.of(given.strip(), read.name().strip(), "Walk");
        return names.stream().filter(name -> !name.isEmpty()).findFirst().orElseThrow();
    }
}
