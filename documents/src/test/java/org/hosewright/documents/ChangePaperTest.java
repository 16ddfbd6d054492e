package org.hosewright.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.order.OrderInFull;
import org.hosewright.ledger.order.OrderSet;
import org.hosewright.ledger.order.OrderedLine;
import org.hosewright.ledger.order.OrderedPressure;
import org.junit.jupiter.api.Test;

/** The change sheet shows what changed, and nothing else. */
final class ChangePaperTest {
    private static final OrderInFull ORDER = Samples.order();

    @Test
    void oneChangedNumberStandsAloneHolds() {
        OrderedPressure first = ORDER.set().lines().get(0).pressures().get(0);
        String text = changes(withFirst(
                new Pressure(first.figure().pascals() + Pressure.ofPsi(10).pascals())));
        long was = Math.round(first.figure().psi()) + 10;
        assertThat(text)
                .contains("1 of ")
                .contains(" numbers change.")
                .contains(was + " psi ")
                .contains(Math.round(first.figure().psi()) + " psi ");
        assertThat(text.split(" psi ", -1)).as("two figures, old and new").hasSize(3);
    }

    @Test
    void nothingChangedIsSaidUnchanged() {
        assertThat(changes(ORDER.set())).contains("No number changes.").doesNotContain(" psi ");
    }

    @Test
    void listToSignBearsTheRevisionHolds() {
        String text = new Pdf(Papers.readers(ORDER, Stamp.UNSIGNED)).text();
        assertThat(text).contains(ORDER.revision().code()).contains("I have read this order and will pump by it.");
    }

    private static String changes(OrderSet before) {
        var order = new OrderInFull(
                ORDER.revision(), ORDER.book(), ORDER.set(), ORDER.kit(), Optional.of(before), ORDER.stale());
        return new Pdf(Papers.changes(order, Stamp.UNSIGNED)).text().replaceAll("\\s+", " ");
    }

    /** The sample's set with another first figure. */
    private static OrderSet withFirst(Pressure figure) {
        List<OrderedLine> lines = new ArrayList<>(ORDER.set().lines());
        OrderedLine line = lines.get(0);
        List<OrderedPressure> pressures = new ArrayList<>(line.pressures());
        OrderedPressure p = pressures.get(0);
        pressures.set(
                0,
                new OrderedPressure(
                        p.length(), figure, p.flow(), p.tip(), p.reaction(), p.tested(), p.refusal(), p.nearest()));
        lines.set(
                0,
                new OrderedLine(
                        line.engine(),
                        line.discharge(),
                        line.hosePackage(),
                        line.gauge(),
                        line.evidence(),
                        line.floorAdder(),
                        line.mostGauge(),
                        line.longestSafe(),
                        pressures));
        return new OrderSet(ORDER.set().units(), ORDER.set().made(), ORDER.set().way(), lines);
    }
}
