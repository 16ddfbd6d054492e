package org.hosewright.ground.walk;

import java.util.List;
import java.util.Optional;
import org.hosewright.ground.terrain.Terrain;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.HeightOrigin;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;

/** The height of every point of a way above its start, from the best source there is. */
final class Heights {
    /** How well a phone's barometer tells the difference of two heights within an hour [m]; from common practice. */
    private static final double BAROMETER_m = 1;

    /** How well a radar terrain file tells the difference of two heights [m]: its relative error, 90 % within 6 to 10 m.
     *
     * @source E. Rodriguez and others, A Global Assessment of the SRTM Performance, 2006
     */
    private static final double TERRAIN_m = 4;

    /** How well a receiver tells the difference of two heights [m]; from common practice. */
    private static final double RECEIVER_m = 8;

    private final double[] heights_m;
    private final Rise rise;

    private Heights(double[] heights_m, double error_m, RiseSource source, String says) {
        this.heights_m = heights_m;
        Length up = new Length(heights_m[heights_m.length - 1]);
        boolean told = source != RiseSource.NONE;
        this.rise = new Rise(told ? Known.of(up, new Length(error_m)) : Known.of(up), source, says);
    }

    /** The heights of a way: by hand if entered, else the barometer, else the terrain, else the receiver. */
    static Heights of(WalkQuestion question, Traced traced, List<String> assumed) {
        Track track = question.track();
        if (question.byHand().isPresent()) {
            EnteredRise entered = question.byHand().get();
            double[] heights = slope(traced, entered.rise().metres());
            return new Heights(
                    heights, entered.standardError().metres(), RiseSource.BY_HAND, RiseSource.BY_HAND.says());
        }
        Optional<double[]> recorded = recorded(track, traced);
        boolean barometer = track.heights() == HeightOrigin.BAROMETER;
        if (recorded.isPresent() && barometer) {
            return new Heights(recorded.get(), BAROMETER_m, RiseSource.BAROMETER, RiseSource.BAROMETER.says());
        }
        if (question.terrain().isPresent()) {
            Terrain terrain = question.terrain().get();
            Optional<double[]> told = terrain(terrain, traced);
            if (told.isPresent()) {
                return new Heights(told.get(), TERRAIN_m, RiseSource.TERRAIN, terrain.source());
            }
            assumed.add("The " + terrain.source() + " does not tell the height of the whole way: it is not used.");
        }
        if (recorded.isPresent()) {
            return new Heights(recorded.get(), RECEIVER_m, RiseSource.RECEIVER, RiseSource.RECEIVER.says());
        }
        assumed.add("No heights are known: the end is taken level with the start.");
        return new Heights(new double[traced.size()], 0, RiseSource.NONE, RiseSource.NONE.says());
    }

    double height_m(int i) {
        return heights_m[i];
    }

    Rise rise() {
        return rise;
    }

    /** An even slope along the way. */
    private static double[] slope(Traced traced, double rise_m) {
        double[] heights = new double[traced.size()];
        double length_m = traced.along_m(heights.length - 1);
        for (int i = 0; i < heights.length; i++) {
            heights[i] = length_m > 0 ? rise_m * traced.along_m(i) / length_m : 0;
        }
        heights[heights.length - 1] = rise_m;
        return heights;
    }

    private static Optional<double[]> terrain(Terrain terrain, Traced traced) {
        double[] heights = new double[traced.size()];
        for (int i = 0; i < heights.length; i++) {
            Optional<Length> height = terrain.findHeight(traced.places().get(i));
            if (height.isEmpty()) {
                return Optional.empty();
            }
            heights[i] = height.get().metres();
        }
        return Optional.of(fromStart(heights));
    }

    /** The track's own heights, each the mean of its neighbours' over some 5 m; empty where a fix has none. */
    private static Optional<double[]> recorded(Track track, Traced traced) {
        double[] own = new double[track.fixes().size()];
        for (int i = 0; i < own.length; i++) {
            Fix fix = track.fixes().get(i);
            if (fix.elevation().isEmpty()) {
                return Optional.empty();
            }
            own[i] = fix.elevation().get().metres();
        }
        double[] heights = new double[traced.size()];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = Levelled.mean(own, traced.fixes().get(i), track.isTimed());
        }
        return Optional.of(fromStart(heights));
    }

    private static double[] fromStart(double[] heights) {
        double start = heights[0];
        for (int i = 0; i < heights.length; i++) {
            heights[i] -= start;
        }
        return heights;
    }
}
