package org.hosewright.evidence.plan;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The lays that could be tried: whole sections of the last hose, and, where others lie before it, all or half of each of them.
 *
 * @param means the night's gear
 */
record Lays(Means means) {
    /** More lengths than this are thinned out evenly; the search would only find neighbours. */
    private static final int MOST_LENGTHS = 16;

    /** The lays, shortest first. */
    List<Line> list() {
        List<Line> lays = new ArrayList<>();
        for (List<Run> before : beforeLast()) {
            for (double length_m : lengths_m()) {
                List<Run> runs = new ArrayList<>(before);
                runs.add(means.line().last().withLength(new Length(length_m)).withRise(new Length(0)));
                lays.add(sloped(runs));
            }
        }
        lays.sort((one, other) ->
                Double.compare(one.length().metres(), other.length().metres()));
        return lays;
    }

    private Line sloped(List<Run> runs) {
        Line line = new Line(
                means.line().discharge(),
                runs,
                means.line().nozzle(),
                means.line().setting());
        double share = line.length().metres() / means.longest().length().metres();
        double step_m = means.units() == UnitSystem.US ? Length.ofFeet(1).metres() : 0.1;
        return line.withRise(new Length(Numbers.toNearest(share * means.rise().metres(), step_m)));
    }

    private List<Double> lengths_m() {
        double section_m = means.line().last().hose().section().metres();
        int sections = (int) Math.floor(means.onHand().metres() / section_m * (1 + 1e-9));
        int stride = (sections + MOST_LENGTHS - 1) / MOST_LENGTHS;
        List<Double> lengths = new ArrayList<>();
        for (int count = sections; count > 0; count -= Math.max(1, stride)) {
            lengths.add(0, count * section_m);
        }
        return lengths;
    }

    private List<List<Run>> beforeLast() {
        List<List<Run>> chains = new ArrayList<>();
        chains.add(List.of());
        for (Run run : means.line().runs().subList(0, means.line().runs().size() - 1)) {
            List<List<Run>> longer = new ArrayList<>();
            for (List<Run> chain : chains) {
                for (Length length : halves(run)) {
                    List<Run> more = new ArrayList<>(chain);
                    more.add(run.withLength(length).withRise(new Length(0)));
                    longer.add(more);
                }
            }
            chains = longer;
        }
        return chains;
    }

    private static List<Length> halves(Run run) {
        double section_m = run.hose().section().metres();
        double half_m = Math.floor(run.length().metres() / section_m / 2) * section_m;
        return half_m > 0 ? List.of(new Length(half_m), run.length()) : List.of(run.length());
    }
}
