package org.hosewright.documents.exchange;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.hosewright.documents.part.Figures;
import org.hosewright.documents.part.Parts;
import org.hosewright.documents.part.Table;
import org.hosewright.documents.press.Html;
import org.hosewright.documents.press.Sheet;
import org.hosewright.documents.press.StampGrid;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.exchange.HandedPackage;
import org.hosewright.ledger.exchange.Handover;
import org.hosewright.ledger.exchange.SignedHandover;
import org.hosewright.ledger.exchange.TheirWords;
import org.hosewright.ledger.order.OrderedPressure;

/** One sheet of what a company hands to its neighbours: package by package, in its own units and in the other ones. */
public final class HandoverPaper {
    private final SignedHandover signed;
    private final Handover handover;
    private final Figures own;
    private final TheirWords both;

    private HandoverPaper(SignedHandover signed) {
        this.signed = signed;
        this.handover = signed.handover();
        this.own = new Figures(handover.units());
        UnitSystem other = handover.units() == UnitSystem.US ? UnitSystem.SI : UnitSystem.US;
        this.both = new TheirWords(handover.units(), other);
    }

    public static Sheet sheet(SignedHandover signed, Stamp stamp) {
        return new HandoverPaper(signed).sheet(stamp);
    }

    private Sheet sheet(Stamp stamp) {
        List<Html> body = new ArrayList<>();
        body.add(Parts.runningHead(stamp, handover.company(), "file " + signed.check()));
        body.add(Parts.stamp(stamp));
        body.add(Html.tag("h1", "What does " + handover.company() + " pump?"));
        body.add(Html.tag("p", subject()).in("subject"));
        if (handover.isWithdrawal()) {
            body.add(Html.tag("p", Html.tag("strong", "Nothing that was handed over before is to be used."))
                    .in("answer"));
            body.add(Html.tag("p", handover.withdrawn()));
        }
        handover.packages().forEach(handed -> body.add(section(handed)));
        body.add(key());
        body.add(Html.tag("p", Parts.OVERRULED).in("fine"));
        return new Sheet(
                "For neighbours, " + handover.company(),
                "report exchange",
                own.paper(),
                stamp,
                StampGrid.WHOLE_PAGE,
                Html.all(body));
    }

    private String subject() {
        String made = "Made " + Figures.day(LocalDate.ofInstant(handover.issued(), ZoneOffset.UTC)) + ". ";
        return handover.isWithdrawal()
                ? made
                : made + "To be used until " + Figures.day(handover.until()) + ". Of " + TheirWords.order(handover)
                        + ".";
    }

    private Html section(HandedPackage handed) {
        String named = Figures.name(handed.line().engine()) + ", "
                + Figures.name(handed.line().discharge());
        Html inside = Html.all(
                Html.tag(
                        "p",
                        Figures.sentence(named) + ". Read on " + handed.line().gauge() + ". " + both.flown(handed)),
                figures(handed),
                Html.tag("p", "Hose: " + both.hose(handed) + "."),
                Html.tag("p", "Nozzle: " + both.nozzle(handed) + "." + crew(handed)),
                Html.tag("p", bounds(handed)),
                Html.tag("p", "Rests on: " + handed.line().evidence() + ".").in("fine"));
        return Html.tag("div", Html.tag("h2", Figures.name(handed.name())), inside)
                .in("section whole");
    }

    private Html figures(HandedPackage handed) {
        Table table = new Table()
                .figures("hose")
                .figures("pump")
                .figures("flow")
                .figures("tip")
                .figures("reaction")
                .words("flown");
        for (OrderedPressure one : handed.line().pressures()) {
            table.row(
                    "",
                    List.of(
                            Html.text(both.text(one.length())),
                            Html.tag("strong", both.text(one.figure())),
                            Html.text(both.text(one.flow())),
                            Html.text(both.text(one.tip())),
                            Html.text(both.text(one.reaction())),
                            Html.text(one.tested() ? "yes" : "no")));
        }
        return table.html();
    }

    private static String crew(HandedPackage handed) {
        return handed.crew().isPresent() ? " Crew of " + handed.crew().getAsInt() + " at the nozzle." : "";
    }

    private String bounds(HandedPackage handed) {
        String most = handed.line()
                .mostGauge()
                .map(pressure -> " Never above " + both.text(pressure) + ".")
                .orElse("");
        return "Each floor up: add " + both.text(handed.line().floorAdder()) + "." + most + " Longest safe stretch "
                + both.text(handed.line().longestSafe()) + ".";
    }

    /** The fingerprint, large enough to be read out. */
    private Html key() {
        return Html.tag(
                        "div",
                        Html.tag("h2", "By telephone"),
                        Html.tag("p", signed.fingerprint().groups()).in("fingerprint"),
                        Html.tag(
                                "p",
                                "The fingerprint of " + handover.company() + ". Whoever takes its file in for the first"
                                        + " time rings the company on a number known before and compares it, group by"
                                        + " group. Check of the file: " + signed.check() + "."))
                .in("section whole");
    }
}
