package org.hosewright.ground.walk;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.ground.track.Earth;
import org.hosewright.ground.track.LocalPlane;
import org.hosewright.ground.track.Track;
import org.hosewright.ground.track.TrackMark;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;

/** From a track to the way that was walked. */
final class WalkAnalysis {
    /** More sections than any company owns. */
    private static final int MOST_SECTIONS = 2000;

    private final WalkQuestion question;
    private final Track track;
    private final List<String> remarks = new ArrayList<>();
    private final List<String> assumed = new ArrayList<>();

    WalkAnalysis(WalkQuestion question) {
        this.question = question;
        this.track = question.track();
    }

    Walk walk() {
        LocalPlane plane = new LocalPlane(track.first().position());
        Traced traced = isWalked() ? Smoothed.of(question, plane, remarks, assumed) : drawn(plane);
        Heights heights = Heights.of(question, traced, assumed);
        List<WayPoint> way = traced.points(heights);
        WayPoint end = way.get(way.size() - 1);
        return new Walk(
                track,
                way,
                end.along(),
                Earth.rawSum(track.fixes()),
                heights.rise(),
                question.section(),
                sections(way),
                marks(way),
                remarks,
                assumed);
    }

    /** True where the track has its times and moves as people do. */
    private boolean isWalked() {
        if (!track.isTimed()) {
            assumed.add("The track has no times: it is taken as drawn, and how well it is known cannot be told.");
            return false;
        }
        if (Pace.isWalk(track)) {
            return true;
        }
        remarks.add("The track moves faster than anybody walks: it is taken as drawn, and how well it is known"
                + " cannot be told.");
        return false;
    }

    private Traced drawn(LocalPlane plane) {
        if (!question.measured().isEmpty()) {
            remarks.add("A measured length corrects a recorded walk only; this track is taken as drawn.");
        }
        if (track.fixes().size() == 2) {
            remarks.add(
                    "The track has a start and an end alone: a straight line on a map is no length of hose. Walk it.");
        }
        return Traced.asDrawn(track, plane);
    }

    private List<SectionMark> sections(List<WayPoint> way) {
        double length_m = way.get(way.size() - 1).along().value().metres();
        double section_m = question.section().metres();
        int count = (int) Math.max(1, Math.ceil(length_m / section_m * (1 - 1e-9)));
        if (count > MOST_SECTIONS) {
            throw new InvalidInput("way", count + " sections", "at most " + MOST_SECTIONS + " sections", "");
        }
        List<SectionMark> marks = new ArrayList<>();
        int after = 1;
        for (int section = 1; section < count; section++) {
            double at_m = section * section_m;
            while (way.get(after).along().value().metres() < at_m) {
                after++;
            }
            WayPoint place = between(way.get(after - 1), way.get(after), at_m);
            marks.add(new SectionMark(section, new Length(at_m), place, new Length(0)));
        }
        double hose_m = count * section_m;
        marks.add(new SectionMark(
                count, new Length(hose_m), way.get(way.size() - 1), new Length(Math.max(0, hose_m - length_m))));
        return marks;
    }

    private static WayPoint between(WayPoint before, WayPoint after, double at_m) {
        double from_m = before.along().value().metres();
        double share = (at_m - from_m) / (after.along().value().metres() - from_m);
        LocalPlane plane = new LocalPlane(before.position());
        LocalPlane.Point there = plane.point(after.position());
        double error_m = before.along().standardErrorSi()
                + share * (after.along().standardErrorSi() - before.along().standardErrorSi());
        double height_m = before.height().metres()
                + share * (after.height().metres() - before.height().metres());
        boolean known = after.along().standardError().isPresent();
        Length at = new Length(at_m);
        return new WayPoint(
                plane.position(new LocalPlane.Point(share * there.east_m(), share * there.north_m())),
                known ? Known.of(at, new Length(error_m)) : Known.of(at),
                new Length(height_m),
                before.fix());
    }

    private List<WalkedMark> marks(List<WayPoint> way) {
        List<WalkedMark> placed = new ArrayList<>();
        for (TrackMark mark : track.marks()) {
            WayPoint place = way.get(0);
            for (WayPoint point : way) {
                place = point.fix() <= mark.at() ? point : place;
            }
            placed.add(new WalkedMark(mark, place));
        }
        return placed;
    }
}
