package org.hosewright.ground.walk;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.error.InvalidInput;

/** The fixes of a timed track that a walk is worked through with: those whose time runs forward.
 *
 * @param index of each kept fix in the track
 * @param seconds of each kept fix since the first
 * @param remarks what was set aside, as sentences
 */
record Kept(List<Integer> index, List<Double> seconds, List<String> remarks) {
    /** A pause after which nobody knows where the person went [s]. */
    static final double LONGEST_GAP_s = 900;

    /** A gap that is said [s]. */
    private static final double GAP_s = 15;

    /** Of so many positions one may run backward in time. */
    private static final int ONE_OF = 10;

    static Kept of(Track track) {
        List<Integer> index = new ArrayList<>();
        List<Double> seconds = new ArrayList<>();
        Instant start = time(track, 0);
        double last_s = Double.NEGATIVE_INFINITY;
        int aside = 0;
        int backward = 0;
        int gaps = 0;
        for (int i = 0; i < track.fixes().size(); i++) {
            double at_s = Duration.between(start, time(track, i)).toMillis() / 1000.0;
            if (at_s <= last_s) {
                aside++;
                backward += at_s < last_s ? 1 : 0;
                requireForward(track, i, backward);
                continue;
            }
            gaps += i > 0 && at_s - last_s > GAP_s ? 1 : 0;
            requireShort(i, i == 0 ? 0 : at_s - last_s);
            last_s = at_s;
            index.add(i);
            seconds.add(at_s);
        }
        return new Kept(List.copyOf(index), List.copyOf(seconds), remarks(aside, gaps));
    }

    private static List<String> remarks(int aside, int gaps) {
        List<String> remarks = new ArrayList<>();
        say(remarks, aside, "set aside: the time does not run forward there.", "position is", "positions are");
        say(
                remarks,
                gaps,
                "longer than 15 s without a position; the way through is not known well.",
                "stretch is",
                "stretches are");
        return List.copyOf(remarks);
    }

    private static Instant time(Track track, int i) {
        Fix fix = track.fixes().get(i);
        return fix.time().orElseThrow();
    }

    private static void requireForward(Track track, int i, int backward) {
        if (backward > 1 + track.fixes().size() / ONE_OF) {
            throw new InvalidInput(
                    "time of position " + (i + 1), time(track, i).toString(), "times that run forward", "");
        }
    }

    private static void requireShort(int i, double pause_s) {
        if (pause_s > LONGEST_GAP_s) {
            String pause = Math.round(pause_s / 60) + " minutes before position " + (i + 1);
            throw new InvalidInput("pause of the track", pause, "one walk, without a pause above 15 minutes", "");
        }
    }

    static void say(List<String> remarks, int count, String what, String one, String many) {
        if (count > 0) {
            remarks.add(count + " " + (count == 1 ? one : many) + " " + what);
        }
    }
}
