package org.hosewright.files.result;

import java.util.Map;
import org.hosewright.ground.walk.WalkedMark;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.walk.LineThere;
import org.hosewright.ledger.walk.SectionThere;
import org.hosewright.ledger.walk.WalkReport;

/** The fields of a walk's result. */
final class WalkFields {
    private final WalkReport report;

    WalkFields(WalkReport report) {
        this.report = report;
    }

    Map<String, Object> map() {
        var walk = report.walk();
        Fields fields = new Fields(report.units())
                .put("units", report.units().word())
                .putText("name", walk.track().name())
                .put("distance", walk.distance())
                .put("raw", walk.raw())
                .put("rise", walk.rise().up())
                .put("riseSource", walk.rise().source().word())
                .put("riseSays", walk.rise().says())
                .put("section", walk.section())
                .put("sections", report.sections().size())
                .put("sectionsAtMost", walk.sectionsAtMost())
                .putAll("marks", report.sections().stream().map(this::section).toList())
                .putAll("tapped", walk.marks().stream().map(this::tapped).toList());
        report.named().ifPresent(named -> fields.put("package", named.id()));
        report.longestSafe().ifPresent(safe -> fields.put("longestSafe", safe));
        report.stoppedBy().ifPresent(limit -> fields.put("stoppedBy", limit.what()));
        return fields.put("cautions", report.cautions())
                .put("assumed", report.assumed())
                .map();
    }

    private Map<String, Object> section(SectionThere there) {
        var place = there.mark().place();
        Fields fields = new Fields(report.units())
                .put("section", there.mark().section())
                .put("hose", there.mark().hose())
                .put("along", place.along())
                .put("lat", place.position().latitude_deg())
                .put("lon", place.position().longitude_deg())
                .put("elevation", place.height());
        if (there.mark().spare().metres() > 0) {
            fields.put("spare", there.mark().spare());
        }
        there.line().ifPresent(line -> line(fields, line));
        return fields.map();
    }

    private static void line(Fields fields, LineThere line) {
        line.ordered().ifPresent(figure -> fields.put("ordered", figure));
        fields.put("pump", line.pump()).put("flow", line.flow()).put("safe", line.isSafe());
        line.first().ifPresent(limit -> fields.put("limit", limit.what()).put("used", Fields.number(limit.used())));
    }

    private Map<String, Object> tapped(WalkedMark marked) {
        Known<Length> along = marked.place().along();
        return new Fields(report.units())
                .put("mark", marked.mark().kind().word())
                .put("along", along)
                .put("elevation", marked.place().height())
                .putText("note", marked.mark().note())
                .map();
    }
}
