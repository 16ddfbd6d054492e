package org.hosewright.documents.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.drill.NeededRow;
import org.hosewright.ledger.drill.RuleRow;
import org.hosewright.ledger.drill.TestedLine;

/** What each length flown needs, with and without what was set aside, beside what the rule and the book deliver. */
final class Needed {
    private static final String GAUGE =
            "Pump pressures are for a gauge before the discharge piping that reads true; ± is the 95 % half-width.";

    private final DrillReport report;
    private final Figures figures;
    private final TestedLine line;
    private final List<NeededRow> rows;
    private final Set<String> aside = new LinkedHashSet<>();

    private Needed(DrillReport report, Figures figures, TestedLine line) {
        this.report = report;
        this.figures = figures;
        this.line = line;
        this.rows =
                report.needed().stream().filter(row -> row.line().equals(line)).toList();
        rows.forEach(row -> aside.addAll(row.ifUsed().keySet()));
    }

    static Html html(DrillReport report, Figures figures) {
        List<Html> tables = new ArrayList<>();
        for (TestedLine line : report.lines()) {
            Needed needed = new Needed(report, figures, line);
            if (!needed.rows.isEmpty()) {
                tables.addAll(needed.tables());
            }
        }
        if (!tables.isEmpty()) {
            tables.add(0, Html.tag("p", GAUGE));
        }
        return Html.all(tables);
    }

    private List<Html> tables() {
        List<Html> tables = new ArrayList<>();
        String name = Figures.sentence(Figures.name(line.discharge())) + ", " + String.join(" + ", line.hoses()) + ", "
                + Figures.name(line.nozzle());
        tables.add(block(name + ", level", needed()));
        delivered(tables, "The present rule, level", report.rule());
        delivered(tables, "The numbers held before this night, level", report.book());
        return tables;
    }

    private Table needed() {
        Table table = new Table().figures("length").figures("needed");
        aside.forEach(reading -> table.figures("needed with reading " + reading + " used as well"));
        for (NeededRow row : rows) {
            List<Html> cells = new ArrayList<>();
            cells.add(Html.text(figures.text(row.length())));
            cells.add(Html.tag("strong", figures.band(row.pump())));
            aside.forEach(reading ->
                    cells.add(Html.text(Optional.ofNullable(row.ifUsed().get(reading))
                            .map(figures::band)
                            .orElse("cannot be told"))));
            table.row("", cells);
        }
        return table;
    }

    private void delivered(List<Html> tables, String caption, List<RuleRow> all) {
        List<RuleRow> mine = all.stream().filter(row -> row.line().equals(line)).toList();
        if (mine.isEmpty()) {
            return;
        }
        Table table = new Table()
                .figures("length")
                .figures("pumps")
                .figures("needed")
                .figures("delivers")
                .figures("at the tip")
                .figures("reaction");
        mine.forEach(row -> table.row(
                figures.text(row.length()),
                figures.text(row.rulePump()),
                figures.text(row.neededPump().value()),
                figures.band(row.flow()),
                figures.text(row.tip()),
                figures.text(row.reaction())));
        tables.add(block(caption, table));
    }

    private static Html block(String caption, Table table) {
        return Html.tag("div", Html.tag("p", caption).in("caption"), table.html())
                .in("block");
    }
}
