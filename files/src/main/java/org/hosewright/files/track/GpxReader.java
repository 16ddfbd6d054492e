package org.hosewright.files.track;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Length.Unit;
import io.jenetics.jpx.Route;
import io.jenetics.jpx.TrackSegment;
import io.jenetics.jpx.WayPoint;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.HeightOrigin;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.track.TrackMark;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;

/** A GPX 1.1 file as a walk: its first recorded track, or its first route where it has none. */
final class GpxReader {
    private final String source;
    private final GPX gpx;
    private final List<Optional<Double>> accuracies;

    private GpxReader(byte[] content, String source) {
        this.source = source;
        Utf8Checked.check(content, source);
        this.accuracies = GpxScan.of(content, source);
        try {
            gpx = GPX.Reader.of(GPX.Version.V11, GPX.Reader.Mode.STRICT).read(new ByteArrayInputStream(content));
        } catch (IOException | RuntimeException broken) {
            String says = String.valueOf(broken.getMessage());
            throw new InvalidInput("GPX file", says, "a file that keeps to GPX 1.1", source);
        }
    }

    /** The walk of a file.
     *
     * @throws InvalidInput broken, hostile, too large, or without two positions in a row
     */
    static Track read(byte[] content, String source) {
        return new GpxReader(content, source).track();
    }

    private Track track() {
        int before = 0;
        for (io.jenetics.jpx.Track track : gpx.getTracks()) {
            List<WayPoint> points =
                    track.segments().flatMap(TrackSegment::points).toList();
            if (points.size() >= 2 && !Gpx.SMOOTHED.equals(track.getType().orElse(""))) {
                return track(track.getName().orElse(""), points, before, origin(track));
            }
            before += points.size();
        }
        for (Route route : gpx.getRoutes()) {
            if (route.getPoints().size() >= 2) {
                return track(route.getName().orElse(""), route.getPoints(), -1, HeightOrigin.RECEIVER);
            }
        }
        throw new InvalidInput("track", "", "a GPX file with a track or a route of two positions or more", source);
    }

    private static HeightOrigin origin(io.jenetics.jpx.Track track) {
        String says = track.getSource().orElse("").toLowerCase(Locale.ROOT);
        return says.contains(Gpx.BAROMETER) ? HeightOrigin.BAROMETER : HeightOrigin.RECEIVER;
    }

    /** A walk from points.
     *
     * @param before track points that stand before these in the file; -1 where these are a route's
     */
    private Track track(String name, List<WayPoint> points, int before, HeightOrigin origin) {
        List<Fix> fixes = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Optional<Double> stated = before < 0 ? Optional.empty() : accuracies.get(before + i);
            fixes.add(fix(points.get(i), stated));
        }
        try {
            return new Track(name, fixes, marks(fixes), origin);
        } catch (InvalidInput refused) {
            throw refused.at(source);
        }
    }

    private static Fix fix(WayPoint point, Optional<Double> stated) {
        Optional<Double> radius =
                stated.or(() -> point.getHdop().filter(hdop -> hdop > 0).map(hdop -> hdop * Gpx.PER_DILUTION_m));
        return new Fix(
                position(point),
                point.getTime(),
                radius.map(Length::new),
                point.getElevation().map(height -> new Length(height.to(Unit.METER))));
    }

    private static Position position(WayPoint point) {
        return new Position(
                point.getLatitude().doubleValue(), point.getLongitude().doubleValue());
    }

    private List<TrackMark> marks(List<Fix> fixes) {
        MarkPlaces places = new MarkPlaces(fixes);
        List<TrackMark> marks = new ArrayList<>();
        for (WayPoint point : gpx.getWayPoints()) {
            places.find(
                            point.getType().orElse(""),
                            position(point),
                            point.getTime(),
                            point.getDescription().orElse(""))
                    .ifPresent(marks::add);
        }
        return marks;
    }
}
