package org.hosewright.server.api;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.documents.stamp.HandoverCode;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.ledger.exchange.Handover;
import org.hosewright.ledger.exchange.Neighbour;
import org.hosewright.ledger.exchange.SignedHandover;
import org.hosewright.ledger.exchange.Standing;
import org.hosewright.server.setup.ServerConfig;

/** What stands across a neighbour's sheet, and what this device knows of one that is held before it. */
final class ExchangePapers {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.UK);

    private final ServerConfig config;

    ExchangePapers(ServerConfig config) {
        this.config = config;
    }

    Stamp stamp(SignedHandover signed, LocalDate today) {
        Handover handover = signed.handover();
        Standing standing = Standing.of(handover, today);
        Stamp stamp = standing == Standing.HELD
                ? Stamp.neighbour(
                        handover.company(),
                        "Use them until " + DAY.format(handover.until()) + ", as known when printed, "
                                + DAY.format(today) + ".")
                : Stamp.neighbourPast(handover.company(), standing.says(handover));
        return (config.demo() && standing == Standing.HELD ? Stamp.DEMO : stamp).bearing(HandoverCode.of(signed));
    }

    /** What is known of a scanned sheet: never more than that. */
    String scanned(HandoverCode code, ExchangeDesk desk) {
        String known = ", as known on this device at "
                + WHEN.format(desk.now().atZone(ZoneId.of(desk.kit().zone()))) + ".";
        List<SignedHandover> held = Stream.concat(
                        desk.neighbours().stream().map(Neighbour::last), desk.findHanded().stream())
                .toList();
        Optional<SignedHandover> same = held.stream().filter(code::isOf).findFirst();
        if (same.isPresent()) {
            Handover handover = same.get().handover();
            String standing = Standing.of(handover, desk.today()).word();
            return "This sheet is of the last file of " + handover.company() + " that is held; it is " + standing
                    + known;
        }
        return held.stream()
                .filter(one -> one.fingerprint().equals(code.fingerprint()))
                .findFirst()
                .map(one -> "This sheet is of another file of "
                        + one.handover().company() + " than the one that is held, made "
                        + DAY.format(one.handover()
                                .issued()
                                .atZone(ZoneId.of(desk.kit().zone())))
                        + ": do not use it" + known)
                .orElse("No file of the company that made this sheet is held" + known);
    }
}
