package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.ground.track.Fix;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.walk.RiseSource;
import org.hosewright.ground.walk.Walk;
import org.hosewright.ground.walk.WalkedMark;
import org.hosewright.ground.walk.WayPoint;
import org.hosewright.ground.walk.WholeEnd;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.walk.LineThere;
import org.hosewright.ledger.walk.SectionThere;
import org.hosewright.ledger.walk.WalkReport;

/** A walk in the words of its page, with the places that its map draws as longitude and latitude. */
final class WalkShown {
    /** Places to a centimetre [degrees]. */
    private static final double PLACES = 1e7;

    private final WalkReport report;
    private final Optional<Kit> kit;
    private final QuantityShown shown;

    WalkShown(WalkReport report, Optional<Kit> kit) {
        this.report = report;
        this.kit = kit;
        this.shown = QuantityShown.of(report.units());
    }

    ObjectNode json() {
        var walk = report.walk();
        ObjectNode json = Answer.object();
        json.put("distance", shown.withBand(walk.distance()));
        json.put("shortest", shown.text(walk.shortest())).put("longest", shown.text(walk.longest()));
        json.put("raw", shown.text(walk.raw()));
        json.put("rise", rise(walk.rise().up())).put("riseSays", walk.rise().says());
        taken(json, walk);
        json.put("section", shown.text(walk.section()));
        json.put("sections", report.sections().size()).put("sectionsAtMost", walk.sectionsAtMost());
        report.named().ifPresent(named -> named(json, named));
        report.longestSafe().ifPresent(safe -> json.put("safe", shown.text(safe)));
        report.stoppedBy().ifPresent(limit -> json.put("stoppedBy", limit.what()));
        ArrayNode marks = json.putArray("marks");
        report.sections().forEach(there -> marks.add(section(there)));
        ArrayNode tapped = json.putArray("tapped");
        walk.marks().forEach(mark -> tapped.add(tapped(mark)));
        json.set("way", places(walk.way().stream().map(WayPoint::position)));
        json.set("rawWay", places(walk.track().fixes().stream().map(Fix::position)));
        report.cautions().forEach(json.putArray("cautions")::add);
        report.assumed().forEach(json.putArray("assumed")::add);
        return json;
    }

    /** Length and rise as files write them, so that a stretch can take them over; the end of a drawn way that whole
     * sections reach. */
    private void taken(ObjectNode json, Walk walk) {
        if (walk.track().isTimed() || walk.track().fixes().size() > 2) {
            json.put("takenLength", shown.fileText(walk.distance()));
        }
        double up_m = walk.rise().up().value().metres();
        Length height = new Length(Math.abs(up_m));
        if (walk.rise().source() != RiseSource.NONE) {
            Known<Length> known = walk.rise()
                    .up()
                    .standardError()
                    .map(error -> Known.of(height, error))
                    .orElseGet(() -> Known.of(height));
            json.put("takenRise", shown.fileText(known)).put("takenWay", up_m < 0 ? "down" : "up");
        }
        if (!walk.track().isTimed()) {
            json.set("wholeEnd", place(WholeEnd.of(walk)));
        }
    }

    /** How far each package is safe along the way; a place where a section ends there. */
    static ArrayNode reaches(List<WalkDesk.Reaches> reaches, UnitSystem units) {
        ArrayNode all = Answer.array();
        for (WalkDesk.Reaches one : reaches) {
            ObjectNode json = all.addObject().put("package", one.hosePackage());
            json.put("safe", QuantityShown.of(units).text(one.safe()));
            one.at().ifPresent(mark -> json.set("at", place(mark.place().position())));
        }
        return all;
    }

    private void named(ObjectNode json, HosePackage named) {
        json.put("package", named.id());
        kit.ifPresent(now -> json.put("line", PackageWords.of(now, named)));
    }

    private String rise(Known<Length> up) {
        String level = shown.rise(up.value());
        return up.standardErrorSi() > 0
                ? level + " ± " + shown.text(new Length(QuantityShown.HALF_WIDTH * up.standardErrorSi()))
                : level;
    }

    private ObjectNode section(SectionThere there) {
        var mark = there.mark();
        ObjectNode json = Answer.object().put("section", mark.section()).put("hose", shown.text(mark.hose()));
        json.put("along", shown.withBand(mark.place().along()));
        json.put("height", shown.rise(mark.place().height()));
        json.set("at", place(mark.place().position()));
        if (mark.spare().metres() > 0) {
            json.put("spare", shown.text(mark.spare()));
        }
        there.line().ifPresent(line -> line(json, line));
        return json;
    }

    private void line(ObjectNode json, LineThere line) {
        line.ordered().ifPresent(figure -> json.put("ordered", shown.text(figure)));
        json.put("pump", shown.withBand(line.pump())).put("flow", shown.withBand(line.flow()));
        json.put("safe", line.isSafeAsOrdered());
        line.tightest()
                .ifPresent(limit ->
                        json.put("limit", limit.what() + asOrdered(line)).put("used", Math.round(100 * limit.used())));
    }

    /** Said where the limit is broken by what is ordered, not by what is needed. */
    private static String asOrdered(LineThere line) {
        return line.isSafe() && line.isBrokenAsOrdered() ? ", as ordered" : "";
    }

    private ObjectNode tapped(WalkedMark marked) {
        ObjectNode json = Answer.object().put("mark", marked.mark().kind().word());
        json.put("note", marked.mark().note());
        json.put("along", shown.withBand(marked.place().along()));
        json.set("at", place(marked.place().position()));
        return json;
    }

    private static ArrayNode places(Stream<Position> positions) {
        ArrayNode all = Answer.array();
        positions.forEach(position -> all.add(place(position)));
        return all;
    }

    private static ArrayNode place(Position position) {
        return Answer.array().add(rounded(position.longitude_deg())).add(rounded(position.latitude_deg()));
    }

    private static double rounded(double degrees) {
        return Math.round(degrees * PLACES) / PLACES;
    }
}
