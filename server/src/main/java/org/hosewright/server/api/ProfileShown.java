package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.calibration.Course;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.profile.Drawing;
import org.hosewright.hydraulics.profile.LineProfile;
import org.hosewright.hydraulics.profile.PressureAt;
import org.hosewright.hydraulics.profile.Sheet;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.TestedLine;
import org.hosewright.ledger.line.KitLines;
import org.hosewright.ledger.picture.NightPicture;

/** The profile of a night's line at one length, with what a finger or a key can do to it. */
final class ProfileShown {
    private final DrillReport report;
    private final TestedLine line;
    private final QuantityShown shown;

    ProfileShown(DrillReport report, TestedLine line) {
        this.report = report;
        this.line = line;
        this.shown = QuantityShown.of(report.kit().units());
    }

    /** The profile of a length, in the rise that it was flown at, else level; empty where the night does not tell it. */
    Optional<ObjectNode> json(Optional<Length> asked, Sheet sheet) {
        Course course = course(asked.orElseGet(this::liveliest));
        return NightPicture.of(report, course).map(profile -> json(course, profile, profile.draw(sheet)));
    }

    private ObjectNode json(Course course, LineProfile profile, Drawing drawing) {
        ObjectNode json = Answer.object();
        json.set("drawing", DrawingJson.of(drawing));
        json.put("says", says(course, profile));
        json.put("length", shown.text(course.length()));
        ArrayNode lengths = json.putArray("lengths");
        line.lengths().forEach(length -> lengths.add(shown.text(length)));
        double section_m = section(course).metres();
        json.put("longer", shown.text(new Length(course.length().metres() + section_m)));
        if (last(course).length().metres() > section_m * 1.5) {
            json.put("shorter", shown.text(new Length(course.length().metres() - section_m)));
        }
        json.put(
                "step", drawing.plot().x(new Length(section_m)) - drawing.plot().left());
        touch(json.putArray("touch"), profile, drawing);
        return json;
    }

    private void touch(ArrayNode json, LineProfile profile, Drawing drawing) {
        for (PressureAt at : profile.pressure()) {
            Pressure error = new Pressure(at.half().pascals() / QuantityShown.HALF_WIDTH);
            String pressure = shown.withBand(Known.of(at.pressure(), error));
            json.addObject()
                    .put("x", DrawingJson.place(drawing.plot().x(at.at())))
                    .put("y", DrawingJson.place(drawing.plot().y(at.pressure())))
                    .put("text", pressure + " at " + shown.text(at.at()));
        }
    }

    private String says(Course course, LineProfile profile) {
        List<String> beside = profile.tip().beside();
        return "Line profile, " + shown.text(course.length()) + ", " + shown.rise(course.rise()) + ": "
                + profile.pump().number() + " " + profile.pump().unit() + " at the pump; at the tip "
                + profile.tip().number() + " " + profile.tip().unit() + ", " + String.join(", ", beside) + ".";
    }

    /** The length with a reading set aside, else the longest: where there is most to see. */
    private Length liveliest() {
        return report.calibration().readings().stream()
                .filter(judged -> !judged.used())
                .flatMap(judged -> report.night().readings().stream()
                        .filter(reading -> reading.id().equals(judged.reading())))
                .filter(reading -> reading.laid().discharge().equals(line.discharge()))
                .map(reading -> reading.laid().length())
                .findFirst()
                .orElse(line.longest());
    }

    private Course course(Length length) {
        List<Stretch> chain = line.chains().stream()
                .filter(flown -> near(sum_m(flown), length.metres()))
                .findFirst()
                .orElseGet(() -> stretched(length));
        return new Course(chain, line.discharge(), flownRise(length), line.nozzle(), line.setting());
    }

    /** The longest chain flown with more or less of its last hose. */
    private List<Stretch> stretched(Length length) {
        List<Stretch> chain = new ArrayList<>(line.chains().get(line.chains().size() - 1));
        Stretch last = chain.remove(chain.size() - 1);
        double rest_m = length.metres() - sum_m(chain);
        chain.add(new Stretch(last.hose(), new Length(rest_m)));
        return chain;
    }

    private Length flownRise(Length length) {
        return report.night().readings().stream()
                .filter(reading -> near(reading.laid().length().metres(), length.metres()))
                .flatMap(reading -> reading.laid().rise().stream())
                .findFirst()
                .orElse(new Length(0));
    }

    private Length section(Course course) {
        return KitLines.get(report.night().gear().hoses(), last(course).hose(), "hose")
                .section();
    }

    private static Stretch last(Course course) {
        return course.hose().get(course.hose().size() - 1);
    }

    private static double sum_m(List<Stretch> chain) {
        return chain.stream().mapToDouble(part -> part.length().metres()).sum();
    }

    private static boolean near(double one_m, double other_m) {
        return Math.abs(one_m - other_m) < 0.01;
    }
}
