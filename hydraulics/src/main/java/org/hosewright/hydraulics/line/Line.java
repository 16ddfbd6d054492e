package org.hosewright.hydraulics.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Ratio;

/** One line: a discharge, a chain of hose and a nozzle in one setting.
 *
 * @param discharge the outlet of the engine, with its piping
 * @param runs the hose in laying order; not empty
 * @param nozzle the nozzle
 * @param setting its setting; empty for the first one listed
 */
public record Line(Discharge discharge, List<Run> runs, Nozzle nozzle, String setting) {
    public Line {
        runs = List.copyOf(runs);
        if (runs.isEmpty()) {
            throw new InvalidInput("hose of the line", "", "at least one length of hose", "");
        }
        nozzle.tip(setting);
    }

    /** The tip that is open. */
    public Tip tip() {
        return nozzle.tip(setting);
    }

    /** The name of the open tip: the nozzle's id, with the setting where there are several. */
    public String tipName() {
        return nozzle.tipName(setting);
    }

    /** The whole chain's length. */
    public Length length() {
        return new Length(
                runs.stream().mapToDouble(run -> run.length().metres()).sum());
    }

    /** Whole sections in the chain. */
    public int sections() {
        return runs.stream().mapToInt(Run::sections).sum();
    }

    /** The tip above the pump, negative downhill. */
    public Length rise() {
        return new Length(runs.stream().mapToDouble(run -> run.rise().metres()).sum());
    }

    public Run last() {
        return runs.get(runs.size() - 1);
    }

    /** The same line with so much of its last hose. */
    public Line withLastLength(Length length) {
        return withRun(runs.size() - 1, last().withLength(length));
    }

    /** The same line where only the whole rise is known.
     *
     * <p>A rise is put at the tip's end and a fall at the pump's, so that every hose is checked at the most that it
     * can see wherever the slope lies; the flow does not depend on it.
     *
     * @param rise the tip above the pump, negative downhill
     */
    public Line withRise(Length rise) {
        Line level = this;
        for (int i = 0; i < runs.size(); i++) {
            level = level.withRun(i, runs.get(i).withRise(new Length(0)));
        }
        int steep = rise.metres() < 0 ? 0 : runs.size() - 1;
        return level.withRun(steep, runs.get(steep).withRise(rise));
    }

    /** The same line with every hose losing so many times as much. */
    Line withLossesTimes(double times) {
        Line changed = this;
        for (int i = 0; i < runs.size(); i++) {
            changed = changed.withRun(i, runs.get(i).withLossTimes(times));
        }
        return changed;
    }

    /** The same line with its nozzle flowing another share of its rating. */
    Line withFlowFactor(double factor) {
        Optional<Known<Ratio>> flow = nozzle.flow().map(known -> new Known<>(new Ratio(factor), known.standardError()));
        Nozzle changed = new Nozzle(nozzle.id(), nozzle.settings(), nozzle.most(), flow);
        return new Line(discharge, runs, changed, setting);
    }

    /** The same line with piping that loses so much more, never less than nothing [Pa s2/m6]. */
    Line withPipingMore(double k) {
        PointLoss loss = new PointLoss(Math.max(0, discharge.lossOrNone().k() + k));
        Discharge changed = new Discharge(discharge.id(), discharge.size(), Optional.of(Known.of(loss)));
        return new Line(k == 0 ? discharge : changed, runs, nozzle, setting);
    }

    private Line withRun(int index, Run run) {
        List<Run> changed = new ArrayList<>(runs);
        changed.set(index, run);
        return new Line(discharge, changed, nozzle, setting);
    }
}
