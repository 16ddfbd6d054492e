package org.hosewright.documents.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.evidence.calibration.FindingKind;
import org.hosewright.evidence.calibration.Judged;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Ruling;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.ledger.drill.DrillReport;

/** Every reading as it was taken, beside what the others foretell; one set aside is struck, with its reason. */
final class Readings {
    private final DrillReport report;
    private final Figures figures;
    private final boolean oneLine;

    private Readings(DrillReport report, Figures figures) {
        this.report = report;
        this.figures = figures;
        this.oneLine = report.lines().size() < 2;
    }

    static Html html(DrillReport report, Figures figures) {
        return new Readings(report, figures).html();
    }

    private Html html() {
        Table table = heads();
        for (Reading reading : report.night().readings()) {
            Optional<Judged> judged = report.calibration().readings().stream()
                    .filter(j -> j.reading().equals(reading.id()))
                    .findFirst();
            boolean aside = judged.filter(j -> !j.used()).isPresent();
            table.row(aside ? "aside" : "", cells(reading, judged));
        }
        return Html.all(
                table.html(),
                Html.tag(
                                "p",
                                "Expected is what the other readings foretell for this one, at its own flow, ± 95 %;"
                                        + " over is read less expected.")
                        .in("fine"));
    }

    private Table heads() {
        String pressure = " " + figures.units().pressure().symbol();
        Table table = new Table().words("reading");
        if (!oneLine) {
            table.words("line");
        }
        return table.figures("length")
                .figures("rise")
                .figures("pump" + pressure)
                .figures("tip" + pressure)
                .figures("meter " + figures.units().flow().symbol())
                .figures("expected" + pressure)
                .figures("over")
                .words("what it says");
    }

    private List<Html> cells(Reading reading, Optional<Judged> judged) {
        List<Html> cells = new ArrayList<>();
        cells.add(Html.text(reading.id()));
        if (!oneLine) {
            cells.add(Html.text(Figures.name(reading.laid().discharge()) + ", "
                    + Figures.name(reading.laid().nozzle())));
        }
        cells.add(Html.text(figures.text(reading.laid().length())));
        cells.add(Html.text(reading.laid().rise().map(this::rise).orElse("not written")));
        cells.add(figure(Optional.of(reading.shown().pump())));
        cells.add(figure(reading.shown().tip()));
        cells.add(figure(reading.shown().flow()));
        Optional<Judged> beside = judged.filter(any -> !report.calibration().isSilent());
        cells.add(Html.tag(
                        "span",
                        beside.map(j -> figures.bandNumber(j.predictedPump())).orElse(""))
                .in("figure"));
        cells.add(figure(beside.map(Judged::excess)));
        cells.add(Html.text(says(reading, judged)));
        return cells;
    }

    private String rise(Length rise) {
        return figures.shown().rise(rise);
    }

    private Html figure(Optional<? extends Quantity> read) {
        return Html.tag("span", read.map(figures::number).orElse("")).in("figure");
    }

    private String says(Reading reading, Optional<Judged> judged) {
        if (judged.isEmpty()) {
            return "";
        }
        Optional<Ruling> ruling = Optional.ofNullable(report.night().rulings().get(reading.id()));
        String ruled = ruling.map(
                        r -> (r.use() ? " Used all the same: " : " Set aside by a person: ") + r.reason() + ".")
                .orElse("");
        String finding =
                (judged.get().finding().says() + " " + judged.get().finding().check()).strip();
        boolean quiet = judged.get().finding().kind() == FindingKind.NONE;
        String what = quiet && judged.get().used() ? "as expected" : finding;
        return ((judged.get().used() ? "" : "Set aside. ") + what + ruled).strip();
    }
}
