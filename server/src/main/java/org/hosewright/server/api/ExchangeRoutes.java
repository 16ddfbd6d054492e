package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.documents.Papers;
import org.hosewright.documents.stamp.HandoverCode;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.files.exchange.ExchangeFile;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.exchange.Fingerprint;
import org.hosewright.ledger.exchange.Handing;
import org.hosewright.ledger.exchange.Neighbour;
import org.hosewright.ledger.exchange.SignedHandover;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.LeafSaving;
import org.hosewright.server.guard.Refusal;

/** Packages handed to neighbours, and neighbours' files: looked at, kept as theirs, taken out. */
final class ExchangeRoutes {
    /** A file as base64, with what stands around it [bytes]. */
    private static final int MOST_BYTES = ExchangeFile.LIMIT * 4 / 3 + 10_000;

    private static final Hat HANDS_OVER = LeafKind.HANDOVER.hat();
    private static final Hat TAKES_IN = LeafKind.NEIGHBOUR.hat();

    private final ExchangeDesk desk;
    private final ExchangePapers papers;

    ExchangeRoutes(ExchangeDesk desk, ExchangePapers papers) {
        this.desk = desk;
        this.papers = papers;
    }

    List<Route> list() {
        return List.of(
                Route.get("/exchange", this::all),
                Route.post("/exchange/handovers", HANDS_OVER, this::handOver),
                Route.post("/exchange/withdrawals", HANDS_OVER, this::withdraw),
                Route.get("/exchange/handed.exchange", this::handed),
                Route.get("/exchange/handed.pdf", this::handedSheet),
                Route.ask("/exchange/arrivals/look", this::look),
                Route.post("/exchange/neighbours", TAKES_IN, this::keep),
                Route.post("/exchange/neighbours/{neighbour}/taken-out", TAKES_IN, this::takeOut),
                Route.get("/exchange/neighbours/{neighbour}/sheet.pdf", this::sheet),
                Route.ask("/exchange/sheet-codes", this::scanned));
    }

    private ExchangeShown shown() {
        return new ExchangeShown(desk.kit().units(), desk.today());
    }

    private void all(Context answer) {
        ExchangeShown shown = shown();
        ObjectNode json = Answer.object().put("company", desk.kit().company());
        json.put("fingerprint", desk.fingerprint().groups());
        json.put("until", desk.today().plusMonths(Handing.MONTHS).toString());
        ArrayNode ready = json.putArray("ready");
        desk.findHanding().ifPresent(handing -> {
            json.put("order", handing.order().name());
            handing.listReady().forEach(ready::add);
            handing.order().whyStale().forEach(json.putArray("stale")::add);
        });
        desk.findHanded().ifPresent(last -> json.set("handed", shown.file(last)));
        ArrayNode neighbours = json.putArray("neighbours");
        desk.neighbours().forEach(one -> neighbours.add(shown.neighbour(one, desk.beside(one))));
        Answer.json(answer, json);
    }

    private void handOver(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "packages", "until"));
        Optional<LocalDate> until = asked.findText("until").map(ExchangeRoutes::day);
        List<String> packages = asked.texts("packages");
        if (packages.isEmpty()) {
            throw new InvalidInput("packages", "", "at least one that is ready", "");
        }
        Answer.json(answer, shown().file(desk.handOver(packages, until, asked.act())));
    }

    private void withdraw(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why"));
        Answer.json(answer, shown().file(desk.withdraw(asked.act())));
    }

    private void handed(Context answer) {
        SignedHandover last = last();
        String name = Answer.fileName(last.handover().company(), "company") + ExchangeFile.SUFFIX;
        Answer.file(answer, name, "text/plain", last.text());
    }

    private void handedSheet(Context answer) {
        send(answer, last());
    }

    private SignedHandover last() {
        return desk.findHanded().orElseThrow(() -> Refused.unknown("file for neighbours"));
    }

    private void look(Context answer) {
        Asked asked = Asked.of(answer, Set.of("file", "name"), MOST_BYTES);
        ExchangeDesk.Looked looked = looked(asked);
        Answer.json(answer, shown().arrival(looked.arrival(), looked.packages()));
    }

    private void keep(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "file", "name", "fingerprint"), MOST_BYTES);
        ExchangeDesk.Looked looked = looked(asked);
        Optional<Fingerprint> told = asked.findText("fingerprint").map(Fingerprint::parse);
        send(answer, desk.keep(looked.arrival(), told, asked.act()));
    }

    private ExchangeDesk.Looked looked(Asked asked) {
        return desk.look(bytes(asked, "file"), asked.findText("name").orElse("the file"));
    }

    private void takeOut(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why"));
        send(answer, desk.takeOut(neighbour(answer), asked.act()));
    }

    private static void send(Context answer, LeafSaving saving) {
        LeafJson.send(answer, saving);
    }

    private void sheet(Context answer) {
        send(answer, neighbour(answer).last());
    }

    private void send(Context answer, SignedHandover signed) {
        Stamp stamp = papers.stamp(signed, desk.today());
        String name = "neighbour-" + Answer.fileName(signed.handover().company(), "company") + ".pdf";
        Answer.file(answer, name, "application/pdf", Papers.handover(signed, stamp));
    }

    private void scanned(Context answer) {
        Asked asked = Asked.of(answer, Set.of("text", "photograph"));
        HandoverCode code = asked.findText("text")
                .map(HandoverCode::parse)
                .orElseGet(() -> HandoverCode.find(bytes(asked, "photograph"))
                        .orElseThrow(() -> new InvalidInput(
                                "photograph",
                                "no code to be made out",
                                "a closer, sharper one of the square code",
                                "")));
        Answer.json(answer, Answer.object().put("says", papers.scanned(code, desk)));
    }

    private Neighbour neighbour(Context request) {
        return desk.findNeighbour(request.pathParam("neighbour"))
                .orElseThrow(() -> new Refusal(404, "No such neighbour", "No such neighbour is held here."));
    }

    private static byte[] bytes(Asked asked, String key) {
        try {
            return Base64.getDecoder().decode(asked.text(key));
        } catch (IllegalArgumentException e) {
            throw new InvalidInput(key, "not base64", "its bytes, base64-encoded", "");
        }
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new InvalidInput("until", text, "a day as in 2027-05-12", "");
        }
    }
}
