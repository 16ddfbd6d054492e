package org.hosewright.documents.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.documents.drawing.Stroking;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.press.Html;
import org.hosewright.evidence.calibration.Course;
import org.hosewright.evidence.night.Laid;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.profile.LineProfile;
import org.hosewright.hydraulics.profile.Pin;
import org.hosewright.hydraulics.profile.Sheet;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.TestedLine;
import org.hosewright.ledger.picture.NightPicture;

/** The profile of each line flown, at the lay that has most to show: one with a reading set aside, else the longest. */
final class Profiles {
    private final DrillReport report;
    private final Figures figures;

    Profiles(DrillReport report, Figures figures) {
        this.report = report;
        this.figures = figures;
    }

    List<Html> html() {
        List<Html> drawings = new ArrayList<>();
        for (TestedLine line : report.lines()) {
            findCourse(line)
                    .flatMap(course -> NightPicture.of(report, course).map(profile -> drawing(course, profile)))
                    .ifPresent(drawings::add);
        }
        return drawings;
    }

    private Html drawing(Course course, LineProfile profile) {
        String what = Figures.sentence(Figures.name(course.discharge())) + ", " + figures.text(course.length()) + ", "
                + figures.shown().rise(course.rise()) + ", " + Figures.name(course.nozzle());
        return Html.tag("div", Html.tag("p", what).in("caption"), Stroking.of(profile.draw(Sheet.PAPER), says(profile)))
                .in("profile");
    }

    private String says(LineProfile profile) {
        String pins = String.join(
                ", ",
                profile.pins().stream()
                        .map(Pin::label)
                        .filter(l -> !l.isEmpty())
                        .toList());
        return "The line from the pump at the left to the tip at the right: "
                + profile.pump().number() + " "
                + profile.pump().unit() + " at the pump falls along " + figures.text(profile.length())
                + " to the tip, which flows " + profile.tip().number() + " "
                + profile.tip().unit() + "."
                + (pins.isEmpty() ? "" : " Pinned to it: " + pins + ".");
    }

    private Optional<Course> findCourse(TestedLine line) {
        Reading best = null;
        for (Reading reading : report.night().readings()) {
            boolean same = reading.laid().discharge().equals(line.discharge())
                    && reading.laid().nozzle().equals(line.nozzle())
                    && reading.laid().setting().equals(line.setting())
                    && reading.laid().hose().stream()
                            .map(s -> s.hose())
                            .toList()
                            .equals(line.hoses());
            if (same && (best == null || weight(reading) > weight(best))) {
                best = reading;
            }
        }
        return Optional.ofNullable(best).map(Reading::laid).map(Profiles::course);
    }

    private double weight(Reading reading) {
        boolean aside = report.calibration().readings().stream()
                .filter(judged -> judged.reading().equals(reading.id()))
                .anyMatch(judged -> !judged.used());
        return (aside ? 1e6 : 0) + reading.laid().length().metres();
    }

    private static Course course(Laid laid) {
        return new Course(
                laid.hose(), laid.discharge(), laid.rise().orElse(new Length(0)), laid.nozzle(), laid.setting());
    }
}
