package org.hosewright.files.exchange;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.exchange.HandedHose;
import org.hosewright.ledger.exchange.HandedNozzle;
import org.hosewright.ledger.exchange.HandedOrder;
import org.hosewright.ledger.exchange.HandedPackage;
import org.hosewright.ledger.exchange.Handover;
import org.hosewright.ledger.kit.Coupling;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;

/** What the invented neighbour hands over. */
public final class AldwickVale {
    public static final Instant ISSUED = Instant.parse("2026-05-20T09:00:00Z");

    private AldwickVale() {}

    /** One package with one figure. */
    public static Handover handover() {
        return handover(ISSUED);
    }

    public static Handover handover(Instant issued) {
        return new Handover(
                "Aldwick Vale Brigade",
                UnitSystem.SI,
                issued,
                LocalDate.of(2027, 5, 20),
                Optional.of(new HandedOrder(3, "0a1b2c3d", LocalDate.of(2026, 5, 19), "T. Marsh")),
                List.of(handed("delivery-75")),
                "");
    }

    private static HandedPackage handed(String id) {
        return new HandedPackage(
                line(id),
                List.of(new HandedHose(
                        "delivery-45",
                        new Length(75),
                        new Length(0.045),
                        new Length(25),
                        Optional.of(new Coupling(new Length(0.064), "instantaneous")))),
                new HandedNozzle(
                        "tip-19",
                        "19 mm smooth bore at 350 kPa",
                        Flow.ofLitresPerMinute(448),
                        new Pressure(350e3),
                        Optional.empty()),
                OptionalInt.of(2),
                Optional.of(Flow.ofLitresPerMinute(450)),
                Optional.of(Flow.ofLitresPerMinute(400)));
    }

    private static OrderedLine line(String id) {
        return new OrderedLine(
                "pump-1",
                "left-1",
                id,
                "the pump gauge",
                "delivery-45: night vale",
                new Pressure(30e3),
                Optional.of(new Pressure(1000e3)),
                new Length(100),
                List.of(new OrderedPressure(
                        new Length(75),
                        new Pressure(600e3),
                        Flow.ofLitresPerMinute(452),
                        new Pressure(356e3),
                        new Force(201),
                        true,
                        List.of(),
                        Optional.empty())));
    }
}
