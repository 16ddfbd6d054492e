package org.hosewright.ground.walk;

import java.time.Duration;
import org.hosewright.ground.track.Earth;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.Track;

/** Whether a track moves as a person on foot does. */
final class Pace {
    /** Faster than this over half a minute nobody walks a stretch, whatever the receiver adds [m/s]. */
    private static final double FASTEST_ms = 3;

    /** Long enough for the receiver's wandering to count little [s]. */
    private static final double WINDOW_s = 30;

    private Pace() {}

    /** True unless the track is, in half of its time or more, too fast to be walked; it must have its times. */
    static boolean isWalk(Track track) {
        Fix before = track.first();
        int slow = 0;
        int fast = 0;
        for (Fix fix : track.fixes()) {
            double dt_s = seconds(before, fix);
            if (dt_s >= WINDOW_s || (fix.equals(track.last()) && dt_s > 0)) {
                double way_m = Earth.distance(before.position(), fix.position()).metres();
                boolean quick = way_m > FASTEST_ms * Math.max(dt_s, WINDOW_s / 2);
                fast += quick ? 1 : 0;
                slow += quick ? 0 : 1;
                before = fix;
            }
        }
        return slow >= fast;
    }

    private static double seconds(Fix from, Fix to) {
        return Duration.between(from.time().orElseThrow(), to.time().orElseThrow())
                        .toMillis()
                / 1000.0;
    }
}
