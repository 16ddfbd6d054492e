package org.hosewright.files.lay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.hosewright.files.Examples;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Intake;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.LayState.AtTip;
import org.hosewright.hydraulics.lay.Piece;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.LayReport;
import org.hosewright.ledger.lay.LayWhatIf;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Lays drawn at random from every piece that the format has, from their text to their result. */
class AnyLayTest {
    private static final long SEED = 20261126;
    private static final int COUNT = 25;
    private static final int LONG_COUNT = 400;

    /** Flows of one sum against each other, relative: the last digits of a fold. */
    private static final double SUM = 1e-9;

    private static final List<String> CHANGES =
            List.of("hydrant 70 %", "rear-3 gate half", "rear-3 kink 10 psi @ 100 gpm", "rear-3 burst 1");

    private final Kit kit = Examples.kit("hill-road.kit.yaml").kit();
    private int refused;

    private Optional<LayReport> report(String text) {
        try {
            return Optional.of(LayReport.of(kit, LayFile.readLaid(text, kit, "lay.yaml"), Optional.empty()));
        } catch (InvalidInput wrong) {
            refused++;
            assertThat(wrong.what()).as(text).isNotEmpty();
            return Optional.empty();
        }
    }

    @Test
    void everyLayIsAnsweredOrRefusedByNameHolds() {
        all(COUNT);
    }

    @Test
    @Tag("long")
    void manyLaysAreAnsweredOrRefusedByNameHold() {
        all(LONG_COUNT);
    }

    private void all(int count) {
        RandomLays lays = new RandomLays(SEED);
        for (int i = 0; i < count; i++) {
            String text = lays.text("pump: 150 psi");
            try {
                report(text).ifPresent(report -> check(report, text));
                report(text.replace("pump: 150 psi", "flow: 90 gpm"))
                        .ifPresent(report -> balanced(report.state(), text));
            } catch (RuntimeException unexpected) {
                throw new AssertionError("seed " + SEED + ", lay " + i + ":\n" + text, unexpected);
            }
        }
        System.out.println(count + " lays asked two ways, " + refused + " refused");
        assertThat(refused).isLessThan(count);
    }

    private void check(LayReport report, String text) {
        balanced(report.state(), text);
        assertThat(ResultJson.lay(report)).as(text).doesNotContain("NaN").doesNotContain("Infinity");
        report(text.replace("pump: 150 psi", "pump: 160 psi"))
                .ifPresent(more -> noLess(report.state(), more.state(), text));
        for (String change : CHANGES) {
            try {
                LayWhatIf found = LayWhatIf.of(report, WhatIfText.parse(change), Optional.empty());
                balanced(found.whatIf().then(), change + " of\n" + text);
            } catch (InvalidInput wrong) {
                assertThat(wrong.what()).as(change + " of\n" + text).isNotEmpty();
            }
        }
    }

    /** What leaves the pump leaves the lay, and what reaches the pump leaves it. */
    private static void balanced(LayState state, String text) {
        double all = state.flow().cubicMetresPerSecond();
        double out = 0;
        for (AtTip tip : state.open()) {
            out += tip.state().flow().cubicMetresPerSecond();
            assertThat(tip.state().flow().cubicMetresPerSecond()).as(text).isGreaterThanOrEqualTo(0);
        }
        for (LayState.Lost lost : state.parts().bursts()) {
            out += lost.flow().cubicMetresPerSecond();
        }
        assertThat(out).as(text).isCloseTo(all, within(SUM * Math.max(all, 1e-3)));
        state.intake()
                .ifPresent(intake -> assertThat(entering(intake, all)).as(text).isCloseTo(all, within(1e-6)));
    }

    /** The sum over the last hose of each supply line; a supply without hose brings it all. */
    private static double entering(Intake intake, double all) {
        double sum = 0;
        boolean any = false;
        for (Piece piece : intake.hoses()) {
            boolean last = Math.abs(piece.after().pascals() - intake.pressure().pascals()) < 1
                    || piece.flow().cubicMetresPerSecond() == 0;
            sum += last ? piece.flow().cubicMetresPerSecond() : 0;
            any |= last;
        }
        return any ? sum : all;
    }

    /** More pump never lowers a tip. */
    private static void noLess(LayState before, LayState more, String text) {
        for (AtTip tip : before.open()) {
            double now = more.getTip(tip.outlet().id()).state().flow().cubicMetresPerSecond();
            assertThat(now)
                    .as(tip.outlet().id() + " of\n" + text)
                    .isGreaterThanOrEqualTo(tip.state().flow().cubicMetresPerSecond() * (1 - SUM));
        }
    }
}
