package org.hosewright.evidence.fault;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.hosewright.evidence.joint.Channel;
import org.hosewright.evidence.joint.Line;
import org.hosewright.evidence.joint.Role;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.Stretch;

/** The causes that can be thought of for some readings.
 *
 * @param causes the causes
 * @param sections how much longer or shorter the line may have been: for each hose and way, one section, two, ...
 */
public record Possible(Set<Cause> causes, List<List<Sections>> sections) {
    private static final int MOST_SECTIONS = 4;

    /** Whole sections of one hose.
     *
     * @param hose place of the hose's unknown
     * @param more_m length more than written, negative for less [m]
     */
    public record Sections(int hose, double more_m) {}

    public Possible {
        causes = EnumSet.copyOf(causes);
        sections = List.copyOf(sections);
    }

    /** The causes for one reading.
     *
     * <p>Readings of one named lay share its length and rise, so neither can be wrong in one of them alone.
     */
    static Possible alone(Survey survey, int place) {
        Reading reading = survey.night().readings().get(place);
        Line line = survey.joint().lines().get(place);
        boolean bound = !reading.laid().lay().isEmpty() && survey.layOf(place).size() > 1;
        Set<Cause> causes = EnumSet.of(Cause.PUMP_GAUGE);
        if (line.has(Channel.TIP)) {
            causes.add(Cause.TIP_GAUGE);
        }
        if (line.has(Channel.FLOW)) {
            causes.add(Cause.FLOW_METER);
        }
        if (!bound) {
            causes.add(Cause.RISE);
        }
        boolean open = !reading.laid().shut();
        if (open) {
            causes.add(Cause.EXTRA_LOSS);
            causes.add(Cause.NOZZLE);
        }
        if (open && !bound) {
            causes.add(Cause.LENGTH);
        }
        return new Possible(causes, open && !bound ? sections(survey, reading) : List.of());
    }

    /** The causes for the readings of one lay together. */
    static Possible together(Survey survey, int anyPlace) {
        Reading reading = survey.night().readings().get(anyPlace);
        Set<Cause> causes = EnumSet.of(Cause.EXTRA_LOSS, Cause.LENGTH, Cause.RISE, Cause.NOZZLE);
        return new Possible(causes, sections(survey, reading));
    }

    private static List<List<Sections>> sections(Survey survey, Reading reading) {
        List<List<Sections>> ways = new ArrayList<>();
        for (Stretch part : reading.laid().hose()) {
            int hose = survey.joint().unknowns().find(Role.HOSE, part.hose()).getAsInt();
            double section_m = survey.hose(part.hose()).section().metres();
            ways.add(sections(hose, section_m, Double.POSITIVE_INFINITY));
            ways.add(sections(hose, -section_m, part.length().metres()));
        }
        return ways;
    }

    private static List<Sections> sections(int hose, double each_m, double below_m) {
        List<Sections> way = new ArrayList<>();
        for (int count = 1; count <= MOST_SECTIONS && Math.abs(count * each_m) < below_m; count++) {
            way.add(new Sections(hose, count * each_m));
        }
        return way;
    }
}
