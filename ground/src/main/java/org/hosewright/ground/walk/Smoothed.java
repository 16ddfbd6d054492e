package org.hosewright.ground.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.hosewright.ground.track.LocalPlane;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;

/** A timed track smoothed: Kalman filter and RTS smoother, stops recognised, measured lengths taken in. */
final class Smoothed {
    /** Radius that is taken where no fix states one [m]; from common practice with phones in the open. */
    private static final double USUAL_ACCURACY_m = 8;

    private Smoothed() {}

    static Traced of(WalkQuestion question, LocalPlane plane, List<String> remarks, List<String> assumed) {
        Track track = question.track();
        Kept kept = Kept.of(track);
        remarks.addAll(kept.remarks());
        if (track.fixes().stream().anyMatch(fix -> fix.accuracy().isEmpty())) {
            assumed.add(
                    "Where the track states no accuracy, two positions in three are taken to lie within 8 m (26 ft).");
        }
        Course course = new CourseMaker(track, plane, kept, USUAL_ACCURACY_m).make();
        Weighing weighing = new Weighing(course);
        Ensemble ensemble = new Ensemble(course, weighing);
        int stops = new Stops(course, ensemble.ways(), weighing.best()).mark();
        if (stops > 0) {
            weighing = new Weighing(course);
            ensemble = new Ensemble(course, weighing);
        }
        say(remarks, stops, spikes(ensemble.best().filter()));
        sayMeasured(question.measured(), remarks);
        Along along = new Along(ensemble.ways());
        question.measured().forEach(length -> along.measured(step(course, length.at()), length));
        return traced(course, ensemble.best().way(), along, plane);
    }

    private static void sayMeasured(List<MeasuredLength> measured, List<String> remarks) {
        if (!measured.isEmpty()) {
            String by = measured.stream()
                    .map(length -> length.by().word())
                    .distinct()
                    .collect(Collectors.joining(", "));
            remarks.add("The distance is corrected by what was measured: " + by + ".");
        }
    }

    private static void say(List<String> remarks, int stops, int spikes) {
        Kept.say(
                remarks, stops, "recognised; what the receiver wandered there is not counted.", "stop is", "stops are");
        Kept.say(remarks, spikes, "set aside: too far off to belong to the walk.", "position is", "positions are");
    }

    private static int spikes(Filter filter) {
        int count = 0;
        for (boolean spike : filter.spike) {
            count += spike ? 1 : 0;
        }
        return count;
    }

    /** The last step whose fix is not behind a fix of the track. */
    private static int step(Course course, int fix) {
        int found = 0;
        for (int step = 0; step < course.size(); step++) {
            found = course.hasFix(step) && course.fix[step] <= fix ? step : found;
        }
        return found;
    }

    private static Traced traced(Course course, Way way, Along along, LocalPlane plane) {
        List<Position> places = new ArrayList<>();
        List<Known<Length>> distances = new ArrayList<>();
        List<Integer> fixes = new ArrayList<>();
        double at_m = 0;
        for (int step = 0; step < course.size(); step++) {
            at_m = Math.max(at_m, along.mean_m(step));
            places.add(plane.position(new LocalPlane.Point(way.east_m[step], way.north_m[step])));
            distances.add(Known.of(new Length(at_m), new Length(along.error_m(step))));
            fixes.add(course.fix[step]);
        }
        return new Traced(places, distances, fixes);
    }
}
