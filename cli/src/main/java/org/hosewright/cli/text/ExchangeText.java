package org.hosewright.cli.text;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.exchange.Arrival;
import org.hosewright.ledger.exchange.Beside;
import org.hosewright.ledger.exchange.HandedPackage;
import org.hosewright.ledger.exchange.Handover;
import org.hosewright.ledger.exchange.Neighbour;
import org.hosewright.ledger.exchange.SignedHandover;
import org.hosewright.ledger.exchange.Standing;
import org.hosewright.ledger.exchange.TheirWords;
import org.hosewright.ledger.order.OrderedPressure;
import org.hosewright.server.api.ExchangeDesk;

/** What was handed over and what came from a neighbour, in plain text.
 *
 * @param units the units that are read here
 * @param today the day that last days are taken at
 */
public record ExchangeText(UnitSystem units, LocalDate today) {
    /** A file that was made. */
    public static List<String> handed(SignedHandover signed, Path file) {
        Handover handover = signed.handover();
        var report = new Report();
        report.title(handover.isWithdrawal() ? "Withdrawn from the neighbours" : "For the neighbours: " + file);
        if (!handover.isWithdrawal()) {
            report.say("Packages: "
                    + String.join(
                            ", ",
                            handover.packages().stream()
                                    .map(HandedPackage::name)
                                    .toList()));
            report.say("Of " + TheirWords.order(handover) + "; to be used until " + handover.until() + ".");
        }
        report.say("Fingerprint: " + signed.fingerprint().groups());
        report.say("Check of the file: " + signed.check());
        report.say("Send it as an attachment. A neighbour who takes it in for the first time rings you to compare the"
                + " fingerprint.");
        return report.lines();
    }

    /** A neighbour's file beside what is ours. */
    public List<String> looked(ExchangeDesk.Looked looked, boolean kept) {
        Arrival arrival = looked.arrival();
        Handover handover = arrival.signed().handover();
        var report = new Report();
        head(report, arrival.signed());
        if (!arrival.firstUse()) {
            key(report, arrival.signed());
        }
        looked.packages().forEach(beside -> beside(report, handover, beside));
        report.title(kept ? "Kept, as theirs. Our own kit and orders are as they were." : next(arrival));
        return report.lines();
    }

    /** What the neighbours handed over. */
    public List<String> neighbours(List<Neighbour> neighbours) {
        var report = new Report();
        if (neighbours.isEmpty()) {
            report.title("No neighbour has handed anything over yet.");
        }
        for (Neighbour neighbour : neighbours) {
            head(report, neighbour.last());
            key(report, neighbour.last());
            report.say("Kept as " + neighbour.id() + "; fingerprint compared by " + neighbour.confirmedBy() + " on "
                    + neighbour.confirmedAt().toString().substring(0, 10) + ".");
            neighbour.last().handover().packages().forEach(theirs -> figures(report, neighbour, theirs));
        }
        return report.lines();
    }

    private void head(Report report, SignedHandover signed) {
        Handover handover = signed.handover();
        report.title(handover.company() + ", made " + handover.issued() + ": their figures, not ours");
        String standing = Standing.of(handover, today).says(handover);
        if (!standing.isEmpty()) {
            report.say(standing);
        }
        if (!handover.isWithdrawal()) {
            report.say("Of " + TheirWords.order(handover) + "; until " + handover.until() + ".");
        }
    }

    private static void key(Report report, SignedHandover signed) {
        report.say("Fingerprint: " + signed.fingerprint().groups());
        report.say("Check of the file: " + signed.check());
    }

    private void figures(Report report, Neighbour neighbour, HandedPackage theirs) {
        Handover handover = neighbour.last().handover();
        var words = new TheirWords(units, handover.units());
        boolean held = Standing.of(handover, today) == Standing.HELD;
        var table = new Columns("hose", "their pump", "flow", "tip");
        theirs.line()
                .pressures()
                .forEach(one -> table.add(
                        words.text(one.length()),
                        held
                                ? words.text(one.figure())
                                : Standing.of(handover, today).word(),
                        words.text(one.flow()),
                        words.text(one.tip())));
        report.table(neighbour.theirs(theirs.name()), table);
        what(report, theirs, words);
    }

    private void beside(Report report, Handover handover, Beside beside) {
        var words = new TheirWords(units, handover.units());
        var table = new Columns("hose", "theirs before", "theirs now", "ours, another line");
        for (Beside.Row row : beside.rows()) {
            table.add(
                    words.text(row.length()),
                    figure(row.before(), words),
                    beside.gone() ? "handed over no longer" : figure(row.now(), words),
                    figure(row.ours(), new TheirWords(units, units)));
        }
        report.table(handover.company() + ": " + beside.theirs().name(), table);
        what(report, beside.theirs(), words);
        report.list("Not the same thing", beside.conflicts());
    }

    private static void what(Report report, HandedPackage theirs, TheirWords words) {
        report.say("Read on " + theirs.line().gauge() + " of their "
                + theirs.line().engine() + ", " + theirs.line().discharge() + ".");
        report.say(words.flown(theirs));
        report.say("Hose: " + words.hose(theirs) + ".");
        report.say("Nozzle: " + words.nozzle(theirs) + ".");
        report.say("Rests on: " + theirs.line().evidence() + ".");
    }

    private static String figure(Optional<OrderedPressure> figure, TheirWords words) {
        return figure.map(one -> words.text(one.figure()) + ", " + words.text(one.flow()))
                .orElse("-");
    }

    private static String next(Arrival arrival) {
        if (arrival.isHeld()) {
            return "This very file is held already.";
        }
        String company = arrival.signed().handover().company();
        return arrival.firstUse()
                ? "Nothing is kept yet. Ring " + company
                        + " on a number you know, have them read out their fingerprint,"
                        + " and say --keep --fingerprint with what you heard."
                : "Nothing is kept yet; say --keep.";
    }
}
