package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
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
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** What was handed over and what came, as the neighbours page shows it: theirs beside ours, never mixed.
 *
 * @param units the units that are read here
 * @param today the day that last days are taken at
 */
record ExchangeShown(UnitSystem units, LocalDate today) {
    /** A neighbour with what it handed over last. */
    ObjectNode neighbour(Neighbour neighbour, List<Beside> packages) {
        ObjectNode json = file(neighbour.last());
        json.put("id", neighbour.id()).put("version", neighbour.version());
        json.put("confirmedBy", neighbour.confirmedBy())
                .put("confirmedAt", neighbour.confirmedAt().toString());
        packages(json, neighbour.last().handover(), packages);
        return json;
    }

    /** A file that came. */
    ObjectNode arrival(Arrival arrival, List<Beside> packages) {
        ObjectNode json = file(arrival.signed());
        json.put("firstUse", arrival.firstUse()).put("held", arrival.isHeld());
        arrival.held()
                .ifPresent(there ->
                        json.put("before", there.last().handover().issued().toString()));
        packages(json, arrival.signed().handover(), packages);
        return json;
    }

    /** A file without its packages. */
    ObjectNode file(SignedHandover signed) {
        Handover handover = signed.handover();
        Standing standing = Standing.of(handover, today);
        ObjectNode json = Answer.object().put("company", handover.company());
        json.put("issued", handover.issued().toString())
                .put("until", handover.until().toString());
        json.put("standing", standing.word()).put("says", standing.says(handover));
        json.put("order", handover.isWithdrawal() ? "" : TheirWords.order(handover));
        json.put("fingerprint", signed.fingerprint().groups()).put("check", signed.check());
        handover.packages().stream().map(HandedPackage::name).forEach(json.putArray("names")::add);
        return json;
    }

    private void packages(ObjectNode json, Handover handover, List<Beside> packages) {
        ArrayNode list = json.putArray("packages");
        var words = new TheirWords(units, handover.units());
        packages.forEach(beside -> list.add(beside(beside, words)));
    }

    private ObjectNode beside(Beside beside, TheirWords words) {
        HandedPackage theirs = beside.theirs();
        OrderedLine line = theirs.line();
        ObjectNode json = Answer.object().put("name", theirs.name()).put("gone", beside.gone());
        json.put("at", line.engine() + ", " + line.discharge())
                .put("gauge", line.gauge())
                .put("evidence", line.evidence());
        json.put("flown", words.flown(theirs)).put("hose", words.hose(theirs)).put("nozzle", words.nozzle(theirs));
        theirs.crew().ifPresent(people -> json.put("crew", people));
        theirs.target().ifPresent(flow -> json.put("target", words.text(flow)));
        theirs.least().ifPresent(flow -> json.put("least", words.text(flow)));
        json.put("floorAdder", words.text(line.floorAdder())).put("safe", words.text(line.longestSafe()));
        line.mostGauge().ifPresent(most -> json.put("mostGauge", words.text(most)));
        ArrayNode rows = json.putArray("rows");
        beside.rows().forEach(row -> rows.add(row(row, words)));
        beside.conflicts().forEach(json.putArray("conflicts")::add);
        return json;
    }

    private ObjectNode row(Beside.Row row, TheirWords words) {
        ObjectNode json = Answer.object().put("length", words.text(row.length()));
        side(json, "before", row.before(), words);
        side(json, "now", row.now(), words);
        side(json, "ours", row.ours(), new TheirWords(units, units));
        return json;
    }

    private static void side(ObjectNode json, String key, Optional<OrderedPressure> side, TheirWords words) {
        side.ifPresent(figure -> json.putObject(key)
                .put("figure", words.text(figure.figure()))
                .put("flow", words.text(figure.flow()))
                .put("tip", words.text(figure.tip()))
                .put("tested", figure.tested()));
    }
}
