package org.hosewright.ledger.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.ground.terrain.Terrain;
import org.hosewright.ground.track.Track;
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
 * @param rise the end above the start as entered by hand, where it was
 */
public record KeptWalk(
        String name,
        String track,
        Optional<String> hosePackage,
        Optional<Known<Length>> measured,
        MeasuredLength.By by,
        List<String> pictures,
        Optional<EnteredRise> rise) {
    public KeptWalk {
        pictures = List.copyOf(pictures);
        if (name.isBlank()) {
            throw new InvalidInput("name of the walk", name, "a name", "");
        }
    }

    /** The same walk corrected by a length that was measured. */
    public KeptWalk withMeasured(Known<Length> length, MeasuredLength.By with) {
        return new KeptWalk(name, track, hosePackage, Optional.of(length), with, pictures, rise);
    }

    /** The same walk with one more photograph. */
    public KeptWalk withPicture(String id) {
        List<String> more = new ArrayList<>(pictures);
        more.add(id);
        return new KeptWalk(name, track, hosePackage, measured, by, more, rise);
    }

    /** The way.
     *
     * @param read what {@link #track} holds
     * @param section from coupling to coupling
     * @param terrain heights of the ground there, where they are known
     */
    public Walk walk(Track read, Length section, Optional<Terrain> terrain) {
        WalkQuestion question = WalkQuestion.of(read, section);
        question = terrain.map(question::withTerrain).orElse(question);
        question = rise.map(question::withRise).orElse(question);
        int last = read.fixes().size() - 1;
        return Walk.of(question.withMeasured(measured.stream()
                .map(known ->
                        new MeasuredLength(known.value(), known.standardError().orElse(new Length(0)), by, last))
                .toList()));
    }

    /** What the track's own name says where the person gave none. */
    public static String name(String given, Track read) {
        List<String> names = List.of(given.strip(), read.name().strip(), "Walk");
        return names.stream().filter(name -> !name.isEmpty()).findFirst().orElseThrow();
    }
}
