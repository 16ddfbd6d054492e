package org.hosewright.documents.trial;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.evidence.trial.Measure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.plan.NightWords;
import org.hosewright.ledger.trial.KeptTrial;
import org.hosewright.ledger.trial.TrialPlan;
import org.hosewright.ledger.trial.TrialTask;

/** The sheet that those who read a blind trial write on: each re-lay by its label, never by its kind. */
public final class TrialPaper {
    /** Readings of one re-lay that the sheet has room for: two or three show what one charge scatters. */
    private static final int READINGS = 3;

    private static final String BLANK = "\u00a0";

    private final KeptTrial trial;
    private final Figures figures;

    private TrialPaper(KeptTrial trial, UnitSystem units) {
        this.trial = trial;
        this.figures = new Figures(units);
    }

    /** The blank sheet of a trial.
     *
     * @param company that holds the trial
     */
    public static Sheet blank(KeptTrial trial, String company, UnitSystem units, Stamp stamp) {
        return new TrialPaper(trial, units).sheet(company, stamp);
    }

    private Sheet sheet(String company, Stamp stamp) {
        String name = trial.plan().name();
        Html inside = Html.all(
                Parts.stamp(stamp),
                Html.tag("h1", name),
                Html.tag("p", company + ". Blind reading sheet, for those who read: labels only.")
                        .in("subject"),
                section("Measured", Parts.list(measured())),
                section("Blind", Parts.list(blind())),
                section("Go or no go", Parts.list(NightWords.GO)),
                section("Keep in mind", Parts.list(NightWords.CAUTIONS)),
                Html.tag("div", Html.tag("h2", "Order of laying"), table().html())
                        .in("section"));
        return new Sheet(
                "Blind reading sheet: " + name + ", " + company,
                "trial",
                figures.paper(),
                stamp,
                StampGrid.WHOLE_PAGE,
                Html.all(Parts.runningHead(stamp, company, "sheet " + inside.code()), inside));
    }

    private static Html section(String head, Html inside) {
        return Html.tag("div", Html.tag("h2", head), inside).in("section whole");
    }

    private List<String> measured() {
        TrialTask task = trial.plan().task();
        String held = figures.text(task.held());
        String how = task.measure() == Measure.LOSS
                ? "Hold " + held + " on the meter, then read the pump gauge and the tip gauge together. "
                        + figures.text(task.over()) + " of hose in every re-lay."
                : "Hold " + held + " at the tip, then read the meter.";
        return List.of(
                how,
                "Same engine, discharge, nozzle, gauges and ground for every re-lay; lay each anew from the bed.",
                "Read each re-lay two or three times while it is charged. Write what the needle shows.",
                "Lay in the order printed. A re-lay that went wrong is laid again under its own number, and the first reading is set aside with its reason.");
    }

    private List<String> blind() {
        TrialPlan plan = trial.plan();
        return List.of(
                "Compared: " + String.join(", ", plan.kinds()) + ". Which label is which is known to "
                        + String.join(", ", plan.holders()) + " alone.",
                "Whoever holds the key lays out the hose or hands out the nozzle, covers whatever tells the kinds apart, and does not read.",
                "Whoever reads does not ask and does not look.");
    }

    private Table table() {
        Table table = new Table().words("re-lay").words("label").words("time").words("read by");
        boolean loss = trial.plan().task().measure() == Measure.LOSS;
        String pressure = " [" + figures.units().pressure().symbol() + "]";
        String flow = " [" + figures.units().flow().symbol() + "]";
        for (int i = 0; i < READINGS; i++) {
            if (loss) {
                table.figures("pump" + pressure).figures("tip" + pressure);
            } else {
                table.figures("flow" + flow);
            }
        }
        List<String> order = trial.order();
        for (int lay = 1; lay <= order.size(); lay++) {
            List<Html> cells = new ArrayList<>();
            cells.add(Html.text(Integer.toString(lay)));
            cells.add(Html.tag("strong", order.get(lay - 1)));
            for (int i = 0; i < 2 + (loss ? 2 : 1) * READINGS; i++) {
                cells.add(Html.text(BLANK));
            }
            table.row("blank", cells);
        }
        return table;
    }
}
