package org.hosewright.cli.text;

import java.util.List;
import java.util.Map;
import org.hosewright.evidence.calibration.Calibration;
import org.hosewright.evidence.calibration.Judged;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.NeededRow;
import org.hosewright.ledger.drill.RuleRow;
import org.hosewright.ledger.drill.Swing;
import org.hosewright.ledger.line.InWords;

/** What a test night showed, in plain text. */
public final class DrillText {
    private final DrillReport night;
    private final Calibration calibration;
    private final QuantityShown shown;
    private final Report report = new Report();

    private DrillText(DrillReport night) {
        this.night = night;
        this.calibration = night.calibration();
        this.shown = QuantityShown.of(night.kit().units());
    }

    public static List<String> of(DrillReport night) {
        return new DrillText(night).write();
    }

    private List<String> write() {
        long aside = calibration.readings().stream().filter(r -> !r.used()).count();
        report.title(night.kit().company() + ", " + night.name() + ": "
                + InWords.readings(night.night().readings().size()) + (aside > 0 ? ", " + aside + " set aside" : ""));
        numbers();
        readings();
        report.list("Go and look", listChecks());
        needed();
        rows("What the present rule delivers, level", night.rule());
        rows("What the numbers before this night would have pumped, level", night.book());
        report.list(
                "Without single readings",
                night.steadiness().swings().stream().map(Swing::says).toList());
        report.list("What this night cannot tell", withheld());
        calibration.belief().stop().ifPresent(says -> report.list("Enough", List.of(says)));
        calibration
                .nextReading()
                .ifPresent(next -> report.list("The reading that would tell most", List.of(next.says())));
        report.list("Keep in mind", night.cautions());
        report.list("Assumed", night.assumed());
        return report.lines();
    }

    private void numbers() {
        var table = new Columns("", "", "");
        var terms = calibration.terms();
        terms.hoses().forEach((id, loss) -> table.add("hose", id, "loses " + shown.withBand(loss)));
        terms.discharges().forEach((id, loss) -> table.add("piping", id, "loses " + shown.withBand(loss)));
        terms.nozzles()
                .forEach((id, factor) ->
                        table.add("nozzle", id, "flows " + shown.change(factor) + " against its rating"));
        terms.meters()
                .forEach((id, factor) ->
                        table.add("meter", id, "reads " + shown.change(factor) + " against the true flow"));
        terms.gauges().forEach((id, offset) -> table.add("gauge", id, "reads off by " + shown.withBand(offset)));
        calibration.residual().ifPresent(scatter -> table.add("scatter", "", shown.text(scatter.value())));
        report.table("What the night shows", table);
    }

    private void readings() {
        var table = new Columns("reading", "length", "pump read", "expected", "over", "");
        for (int i = 0; i < calibration.readings().size(); i++) {
            Judged judged = calibration.readings().get(i);
            Reading reading = night.night().readings().get(i);
            table.add(
                    judged.reading(),
                    shown.text(reading.laid().length()),
                    shown.text(reading.shown().pump()),
                    shown.withBand(judged.predictedPump()),
                    shown.text(judged.excess()),
                    verdict(judged));
        }
        if (!calibration.isSilent()) {
            report.table("The readings against all the others", table);
        }
    }

    private static String verdict(Judged judged) {
        boolean quiet = judged.used() && judged.finding().check().isEmpty();
        return quiet
                ? ""
                : (judged.used() ? "" : "set aside: ") + judged.finding().says();
    }

    private List<String> listChecks() {
        return calibration.readings().stream()
                .filter(judged -> !judged.finding().check().isEmpty())
                .map(judged ->
                        "reading " + judged.reading() + ": " + judged.finding().check())
                .toList();
    }

    private void needed() {
        var table = new Columns("line", "length", "pump", "");
        for (NeededRow row : night.needed()) {
            table.add(
                    row.line().discharge() + ", " + row.line().nozzle(),
                    shown.text(row.length()),
                    shown.withBand(row.pump()),
                    withAside(row.ifUsed()));
        }
        report.table("Pump pressure needed, level", table);
    }

    private String withAside(Map<String, Known<Pressure>> ifUsed) {
        return String.join(
                "; ",
                ifUsed.entrySet().stream()
                        .map(other -> shown.withBand(other.getValue()) + " with reading " + other.getKey() + " used")
                        .toList());
    }

    private void rows(String title, List<RuleRow> rows) {
        var table = new Columns("line", "length", "pumped", "delivers", "at the tip", "reaction", "needed");
        for (RuleRow row : rows) {
            table.add(
                    row.line().discharge() + ", " + row.line().nozzle(),
                    shown.text(row.length()),
                    shown.text(row.rulePump()),
                    shown.withBand(row.flow()),
                    shown.text(row.tip()),
                    shown.text(row.reaction()),
                    shown.withBand(row.neededPump()));
        }
        report.table(title, table);
    }

    private List<String> withheld() {
        return calibration.withheld().stream()
                .map(missing -> missing.what() + ": " + missing.why() + "; what would settle it: " + missing.needs())
                .toList();
    }
}
