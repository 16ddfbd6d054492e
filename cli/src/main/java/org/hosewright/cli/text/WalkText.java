package org.hosewright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hosewright.ground.walk.RiseSource;
import org.hosewright.ground.walk.Walk;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.walk.LineThere;
import org.hosewright.ledger.walk.SectionThere;
import org.hosewright.ledger.walk.WalkReport;

/** A way that was walked, in plain text; what is not safe stands before the numbers. */
public final class WalkText {
    private final WalkReport walked;
    private final QuantityShown shown;

    private WalkText(WalkReport walked) {
        this.walked = walked;
        this.shown = QuantityShown.of(walked.units());
    }

    public static List<String> of(WalkReport walked) {
        return new WalkText(walked).lines();
    }

    private List<String> lines() {
        Report report = new Report();
        Walk walk = walked.walk();
        String name =
                walk.track().name().isEmpty() ? "The way walked" : walk.track().name();
        report.title(name);
        report.list("Beyond its limit", broken());
        Columns answer = new Columns("", "");
        answer.add("distance", shown.withBand(walk.distance()));
        answer.add("raw sum of positions", shown.text(walk.raw()));
        answer.add("rise", rise(walk.rise().up()));
        String source = walk.rise().source() == RiseSource.TERRAIN
                ? walk.rise().says()
                : walk.rise().source().says();
        answer.add("rise from", source);
        answer.add("sections of " + shown.text(walk.section()), count(walk));
        walked.longestSafe().ifPresent(safe -> answer.add("safe to", shown.text(safe)));
        report.table("The way", answer);
        report.table("Where each section ends", sections());
        report.list("Marked on the way", marks());
        report.list("Keep in mind", walked.cautions());
        report.list("Assumed", walked.assumed());
        return report.lines();
    }

    private String count(Walk walk) {
        int most = walk.sectionsAtMost();
        return walk.sections().size() + (most > walk.sections().size() ? ", up to " + most : "");
    }

    private List<String> broken() {
        List<String> broken = new ArrayList<>();
        walked.sections().stream()
                .filter(there -> there.line().isPresent() && !there.line().get().isSafe())
                .findFirst()
                .ifPresent(there -> broken.add(beyond(there)));
        List<SectionThere> asOrdered = walked.sections().stream()
                .filter(there -> there.line().map(LineThere::isBrokenAsOrdered).orElse(false))
                .toList();
        if (!asOrdered.isEmpty()) {
            broken.add(asOrdered(asOrdered));
        }
        return broken;
    }

    private String asOrdered(List<SectionThere> sections) {
        SectionThere first = sections.get(0);
        SectionThere last = sections.get(sections.size() - 1);
        String where = sections.size() == 1
                ? "At section " + first.mark().section() + " ("
                        + shown.text(first.mark().hose()) + ") "
                : "From section " + first.mark().section() + " to "
                        + last.mark().section() + " (" + shown.text(first.mark().hose()) + " to "
                        + shown.text(last.mark().hose()) + ") ";
        return where + "at the ordered pressure "
                + stop(first.line().orElseThrow().asOrdered().orElseThrow()) + "; pump what the section needs.";
    }

    private String beyond(SectionThere there) {
        String from = "From section " + there.mark().section() + " ("
                + shown.text(there.mark().hose()) + ") on ";
        return from + walked.stoppedBy().map(this::stop).orElse("nothing says that the line is safe") + ".";
    }

    private String stop(Limit limit) {
        return limit.what() + " may see " + shown.text(limit.at()) + ", against " + shown.text(limit.limit()) + " ("
                + limit.rule(shown.units()) + ")";
    }

    private String rise(Known<Length> up) {
        String half = up.standardErrorSi() > 0
                ? " ± " + shown.text(new Length(QuantityShown.HALF_WIDTH * up.standardErrorSi()))
                : "";
        return shown.rise(up.value()) + half;
    }

    private Columns sections() {
        boolean line = walked.named().isPresent();
        Columns table = line
                ? new Columns("section", "hose", "ground", "pump", "ordered", "flow", "first limit")
                : new Columns("section", "hose", "ground", "place");
        for (SectionThere there : walked.sections()) {
            String number = String.valueOf(there.mark().section());
            String hose = shown.text(there.mark().hose());
            String ground = shown.rise(there.mark().place().height());
            if (line) {
                table.add(
                        number,
                        hose,
                        ground,
                        laid(there, at -> shown.withBand(at.pump())),
                        laid(there, at -> at.ordered().map(shown::text).orElse("none")),
                        laid(there, at -> shown.text(at.flow().value())),
                        laid(there, WalkText::limit));
            } else {
                table.add(number, hose, ground, place(there));
            }
        }
        return table;
    }

    private static String laid(SectionThere there, Function<LineThere, String> says) {
        return there.line().map(says).orElse("");
    }

    private static String limit(LineThere at) {
        String unsafe = !at.isSafe() ? " - NOT SAFE" : at.isBrokenAsOrdered() ? " - NOT SAFE as ordered" : "";
        return at.tightest().map(Limit::what).orElse("") + unsafe;
    }

    private String place(SectionThere there) {
        boolean last = there.mark().spare().metres() > 0;
        return last
                ? shown.text(there.mark().spare()) + " to spare at the end"
                : "within " + half(there.mark().place().along()) + " along the way";
    }

    private String half(Known<Length> along) {
        return shown.text(new Length(QuantityShown.HALF_WIDTH * along.standardErrorSi()));
    }

    private List<String> marks() {
        return walked.walk().marks().stream()
                .map(marked -> marked.mark().kind().word() + " at "
                        + shown.text(marked.place().along().value())
                        + (marked.mark().note().isEmpty()
                                ? ""
                                : ": " + marked.mark().note()))
                .toList();
    }
}
