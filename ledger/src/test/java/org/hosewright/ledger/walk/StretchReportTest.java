package org.hosewright.ledger.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.hosewright.ground.stretch.PartKind;
import org.hosewright.ground.stretch.Slack;
import org.hosewright.ground.stretch.StretchEstimate;
import org.hosewright.ground.stretch.StretchPart;
import org.hosewright.ground.stretch.StretchPlan;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.BrindleFalls;
import org.hosewright.ledger.kit.Kit;
import org.junit.jupiter.api.Test;

class StretchReportTest {
    private static StretchReport report(double feet, Length rise) {
        Kit kit = BrindleFalls.kit(Optional.empty(), 0, 150);
        StretchPlan plan = new StretchPlan(
                Length.ofFeet(50),
                List.of(StretchPart.of(PartKind.TO_DOOR, Length.ofFeet(feet))),
                Optional.empty(),
                Slack.NONE,
                1);
        return StretchReport.of(
                StretchEstimate.of(plan, Optional.empty()),
                kit,
                kit.packages().values().iterator().next(),
                rise,
                Optional.of(BrindleFalls.TODAY));
    }

    @Test
    void moreSectionsNeedMorePressureHolds() {
        StretchReport level = report(260, new Length(0));
        StretchReport up = report(260, Length.ofFeet(20));
        assertThat(level.lines()).hasSizeGreaterThan(1);
        for (int i = 0; i < level.lines().size(); i++) {
            double here_Pa = level.lines().get(i).line().pump().value().pascals();
            assertThat(up.lines().get(i).line().pump().value().pascals()).isGreaterThan(here_Pa);
            if (i > 0) {
                double before_Pa =
                        level.lines().get(i - 1).line().pump().value().pascals();
                assertThat(here_Pa).isGreaterThan(before_Pa);
            }
        }
    }

    @Test
    void safety15StretchTooLongIsNotSafeHolds() {
        var lines = report(2000, new Length(0)).lines();
        var most = lines.get(lines.size() - 1).line();
        assertThat(most.isSafe()).isFalse();
        assertThat(most.first().orElseThrow().broken()).isTrue();
        assertThat(report(80, new Length(0)).lines().get(0).line().isSafe()).isTrue();
    }
}
