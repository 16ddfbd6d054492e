package org.hosewright.ledger.exchange;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NozzleRecord;
import org.hosewright.ledger.line.InWords;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** What a company may hand over of the order in force: packages whose figures stand and are not stale.
 *
 * @param order the order in force
 * @param kit the company's kit as it stands
 */
public record Handing(OrderInFull order, Kit kit) {
    /** How long figures are handed over for where nobody says: as long as a hose test is good [months]. */
    public static final int MONTHS = 12;

    /** When the next file is made: now, to the second, and after the last one whatever the clock says. */
    public static Instant issue(Instant now, Optional<Instant> last) {
        Instant second = now.truncatedTo(ChronoUnit.SECONDS);
        return last.filter(before -> !second.isAfter(before))
                .map(before -> before.plusSeconds(1))
                .orElse(second);
    }

    /** Ids of the packages that may be handed over as things stand. */
    public List<String> listReady() {
        return order.set().lines().stream()
                .filter(line -> !order.stale().isStale(line.hosePackage()))
                .filter(line -> line.pressures().stream().anyMatch(OrderedPressure::stands))
                .map(OrderedLine::hosePackage)
                .toList();
    }

    /** The handover of some packages.
     *
     * @param packages their ids
     * @throws InvalidInput the order holds no figure for one of them, or it is stale, and why
     */
    public Handover of(List<String> packages, Instant issued, LocalDate until) {
        LocalDate today = LocalDate.ofInstant(issued, ZoneId.of(kit.zone()));
        if (until.isBefore(today)) {
            throw new InvalidInput("last day", until.toString(), "today or later", "");
        }
        return new Handover(
                kit.company(),
                kit.units(),
                issued,
                until,
                Optional.of(signed()),
                packages.stream().map(this::handed).toList(),
                "");
    }

    /** What takes back all that was handed over before.
     *
     * @param why the reason; not blank
     */
    public static Handover withdrawal(Kit kit, Instant issued, String why) {
        if (why.isBlank()) {
            throw new InvalidInput("reason of the withdrawal", "", "why the figures are not to be used any more", "");
        }
        LocalDate today = LocalDate.ofInstant(issued, ZoneId.of(kit.zone()));
        return new Handover(kit.company(), kit.units(), issued, today, Optional.empty(), List.of(), why);
    }

    private HandedOrder signed() {
        var signature = order.revision()
                .signature()
                .orElseThrow(() -> new InvalidInput("order", order.name(), "a signed one", ""))
                .mark();
        LocalDate day = LocalDate.ofInstant(signature.at(), ZoneId.of(kit.zone()));
        return new HandedOrder(order.revision().number(), order.revision().code(), day, signature.who());
    }

    private HandedPackage handed(String id) {
        if (order.stale().isStale(id)) {
            String why = String.join(" ", order.stale().why(id));
            throw new InvalidInput("package", id, "one that is not stale: " + why + " Sign a new order first", "");
        }
        OrderedLine line = order.set().lines().stream()
                .filter(one -> one.hosePackage().equals(id) && listReady().contains(id))
                .findFirst()
                .orElseThrow(() -> new InvalidInput("package", id, String.join(", ", listReady()), ""));
        HosePackage named = get(kit.packages().get(id), id);
        return new HandedPackage(
                standing(line),
                named.hose().stream().map(this::hose).toList(),
                nozzle(named),
                named.crew(),
                named.target(),
                named.least());
    }

    private static OrderedLine standing(OrderedLine line) {
        return new OrderedLine(
                line.engine(),
                line.discharge(),
                line.hosePackage(),
                line.gauge(),
                line.evidence(),
                line.floorAdder(),
                line.mostGauge(),
                line.longestSafe(),
                line.pressures().stream().filter(OrderedPressure::stands).toList());
    }

    private HandedHose hose(Stretch part) {
        HoseRecord record = get(kit.hoses().get(part.hose()), part.hose());
        Hose hose = record.hose();
        return new HandedHose(hose.id(), part.length(), hose.diameter(), hose.section(), record.coupling());
    }

    private HandedNozzle nozzle(HosePackage named) {
        NozzleRecord record = get(kit.nozzles().get(named.nozzle()), named.nozzle());
        Tip tip = record.nozzle().rated(named.setting());
        String what = InWords.nozzle(kit, named.nozzle(), named.setting());
        return new HandedNozzle(named.nozzle(), what, tip.flowAt(), tip.at(), record.coupling());
    }

    private static <T> T get(@org.jspecify.annotations.Nullable T found, String id) {
        if (found == null) {
            throw new InvalidInput("name in the order", id, "one that the kit has", "");
        }
        return found;
    }
}
