package org.hosewright.ledger.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.BrindleFalls;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.order.OrderSet;
import org.junit.jupiter.api.Test;

class BesideTest {
    private static final Handover THEIRS = new Handover(
            "Aldwick Vale Brigade",
            UnitSystem.SI,
            Instant.parse("2026-05-20T09:00:00Z"),
            LocalDate.of(2027, 5, 20),
            Optional.of(new HandedOrder(3, "0a1b2c3d", LocalDate.of(2026, 5, 19), "T. Marsh")),
            List.of(ArrivalTest.handed()),
            "");

    private final Kit kit = BrindleFalls.kit(Optional.empty(), 0, 120);

    @Test
    void theSameNamesAreSaidNotToBeTheSameThingsHold() {
        Beside beside = beside(Optional.empty()).get(0);
        assertThat(beside.conflicts())
                .anyMatch(said -> said.contains("package crosslay-1-200 too") && said.contains("another line"))
                .anyMatch(said -> said.contains("hose attack-175 too")
                        && said.contains("50 ft sections")
                        && said.contains("not the same hose"))
                .anyMatch(said -> said.contains("nozzle seven-eighths too") && said.contains("gpm"))
                .anyMatch(said -> said.contains("coupled") && said.contains("ask before"));
    }

    @Test
    void theirFigureStandsBesideOursAtTheSameLengthHolds() {
        Beside.Row row = beside(Optional.empty()).get(0).rows().stream()
                .filter(one -> Math.abs(one.length().feet() - 200) < 1e-6)
                .findFirst()
                .orElseThrow();
        assertThat(row.now().orElseThrow().figure().pascals()).isEqualTo(600e3);
        assertThat(row.ours()).isPresent();
        assertThat(row.ours().orElseThrow().figure())
                .isNotEqualTo(row.now().get().figure());
        assertThat(row.before()).isEmpty();
    }

    @Test
    void whatIsHandedOverNoLongerIsShownHolds() {
        Handover back = new Handover(
                THEIRS.company(),
                UnitSystem.SI,
                THEIRS.issued(),
                THEIRS.until(),
                Optional.empty(),
                List.of(),
                "Changed.");
        List<Beside> all = Beside.of(back, Optional.of(THEIRS), own());
        assertThat(all).singleElement().satisfies(one -> {
            assertThat(one.gone()).isTrue();
            assertThat(one.rows()).allMatch(row -> row.now().isEmpty());
        });
    }

    private List<Beside> beside(Optional<Handover> before) {
        return Beside.of(THEIRS, before, own());
    }

    private Beside.Own own() {
        var way = Rounding.Way.NEAREST;
        OrderSet set = OrderSet.of(CardAnalysis.of(kit, "", LocalDate.of(2026, 6, 1), way), way);
        return new Beside.Own(kit, Optional.of(set));
    }
}
