package org.hosewright.files.track;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hosewright.ground.track.Earth;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.MarkKind;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.TrackMark;

/** Finds the fix that a mark in a file belongs to: by its time, or else by its place. */
final class MarkPlaces {
    /** The places of more marks than this are not looked for one by one. */
    private static final int MOST_COMPARED = 20_000_000;

    private final List<Fix> fixes;
    private long compared;

    MarkPlaces(List<Fix> fixes) {
        this.fixes = fixes;
    }

    /** The mark, where the word is one that people mark. */
    Optional<TrackMark> find(String word, Position position, Optional<Instant> time, String note) {
        return MarkKind.find(word).flatMap(kind -> at(position, time).map(at -> new TrackMark(kind, at, note)));
    }

    private Optional<Integer> at(Position position, Optional<Instant> time) {
        compared += fixes.size();
        if (compared > MOST_COMPARED) {
            return Optional.empty();
        }
        return Optional.of(time.isPresent() && fixes.get(0).time().isPresent() ? byTime(time.get()) : near(position));
    }

    private int byTime(Instant time) {
        int found = 0;
        for (int i = 0; i < fixes.size(); i++) {
            Optional<Instant> at = fixes.get(i).time();
            found = at.isPresent() && !at.get().isAfter(time) ? i : found;
        }
        return found;
    }

    private int near(Position position) {
        int nearest = 0;
        double least_m = Double.POSITIVE_INFINITY;
        for (int i = 0; i < fixes.size(); i++) {
            double away_m = Earth.distance(position, fixes.get(i).position()).metres();
            nearest = away_m < least_m ? i : nearest;
            least_m = Math.min(least_m, away_m);
        }
        return nearest;
    }
}
