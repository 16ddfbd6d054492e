package org.hosewright.files.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.plan.TestPoint;
import org.hosewright.files.kit.Chain;
import org.hosewright.files.readings.ReadingsTable;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.plan.PlanReport;

/** The readings of a planned night as a table of the open format: what to lay and hold is written, what to read is blank. */
public final class BlankReadings {
    private static final String SHUT = "shut";

    /** Lengths are whole sections; a rise shared out over the lays is known no better than this step of the unit. */
    private static final double STEP = 0.1;

    private final PlanReport report;
    private final UnitSystem units;
    private final QuantityShown shown;

    private BlankReadings(PlanReport report) {
        this.report = report;
        this.units = report.kit().units();
        this.shown = QuantityShown.of(units);
    }

    /** The table of a plan, one row a planned reading, in its order. */
    public static ReadingsTable of(PlanReport report) {
        return new BlankReadings(report).table();
    }

    private ReadingsTable table() {
        String length = units.length().symbol();
        String pressure = units.pressure().symbol();
        List<String> columns = List.of(
                "reading",
                "discharge",
                "hose",
                "length [" + length + "]",
                "rise [" + length + "]",
                "nozzle",
                "setting",
                "pump [" + pressure + "]",
                "tip [" + pressure + "]",
                "flow [" + units.flow().symbol() + "]",
                "pump gauge",
                "tip gauge",
                "meter",
                "lay",
                "doubt",
                "note");
        return new ReadingsTable(columns, rows(columns));
    }

    private List<ReadingsTable.Row> rows(List<String> columns) {
        List<ReadingsTable.Row> rows = new ArrayList<>();
        int laying = 0;
        int before = -1;
        for (TestPoint point : report.plan().points()) {
            laying += point.lay() == before ? 0 : 1;
            before = point.lay();
            Map<String, String> cells = cells(point, columns);
            cells.put("reading", String.valueOf(rows.size() + 1));
            cells.put("lay", String.valueOf(laying));
            rows.add(new ReadingsTable.Row(0, cells));
        }
        return rows;
    }

    private Map<String, String> cells(TestPoint point, List<String> columns) {
        boolean chain = point.chain().size() > 1;
        var means = report.plan().means();
        Map<String, String> cells = new LinkedHashMap<>();
        cells.put("discharge", point.line().discharge().id());
        cells.put(
                "hose",
                chain
                        ? Chain.text(point.chain(), report.kit().hoses(), units)
                        : point.chain().get(0).hose());
        cells.put(columns.get(3), bare(point.line().length()));
        cells.put(columns.get(4), bare(point.line().rise()));
        cells.put("nozzle", point.line().nozzle().id());
        cells.put("setting", point.shut() ? SHUT : point.line().setting());
        cells.put("pump gauge", point.pumpGauge());
        means.tipGauge().ifPresent(gauge -> cells.put("tip gauge", gauge));
        Optional.of(point)
                .filter(flowing -> !flowing.shut())
                .flatMap(flowing -> means.meter())
                .ifPresent(meter -> cells.put("meter", meter));
        cells.put("note", note(point));
        return cells;
    }

    private String note(TestPoint point) {
        String hold = point.shut()
                ? "nozzle shut, pump idling"
                : "hold " + shown.text(point.state().tip()) + " at the tip, pump about "
                        + shown.text(point.atPumpGauge(report.plan().means()));
        return hold
                + point.never()
                        .map(never -> ", never above " + shown.text(never))
                        .orElse("");
    }

    private String bare(Length length) {
        return Numbers.plain(Numbers.toNearest(units.length().ofSi(length.metres()), STEP));
    }
}
