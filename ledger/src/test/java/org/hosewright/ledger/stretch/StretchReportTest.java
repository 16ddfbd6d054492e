package org.hosewright.ledger.stretch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.ground.stretch.PartKind;
import org.hosewright.ground.stretch.Slack;
import org.hosewright.ground.stretch.StretchFactor;
import org.hosewright.ground.stretch.StretchPart;
import org.hosewright.ground.walk.EnteredRise;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.BrindleFalls;
import org.hosewright.ledger.kit.Kit;
import org.junit.jupiter.api.Test;

class StretchReportTest {
    private static StretchReport report(double feet, Length rise) {
        Kit kit = BrindleFalls.kit(Optional.empty(), 0, 150);
        return StretchReport.of(
                kept(kit, feet, rise, Optional.empty()), kit, Optional.empty(), Optional.of(BrindleFalls.TODAY));
    }

    private static KeptStretch kept(Kit kit, double feet, Length rise, Optional<String> second) {
        return new KeptStretch(
                "12 Mill Lane",
                KeptStretch.Site.UNKNOWN,
                List.of(kit.packages().keySet().iterator().next()),
                second,
                List.of(StretchPart.of(PartKind.TO_DOOR, Length.ofFeet(feet))),
                Optional.empty(),
                Slack.NONE,
                1,
                Optional.of(new EnteredRise(EnteredRise.Direction.UP, rise, new Length(0))),
                List.of());
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

    @Test
    void hoseUsedTeachesTheCompanysFactorHolds() {
        Kit kit = BrindleFalls.kit(Optional.empty(), 0, 150);
        KeptStretch never = kept(kit, 200, new Length(0), Optional.empty());
        assertThat(KeptStretch.factor(List.of(never), List.of(), kit)).isEmpty();
        KeptStretch often = never;
        for (int day = 1; day <= 12; day++) {
            often = often.withLaid(new KeptStretch.LaidOnce(LocalDate.of(2026, 5, day), Length.ofFeet(260)));
        }
        StretchFactor factor =
                KeptStretch.factor(List.of(never, often), List.of(), kit).orElseThrow();
        assertThat(factor.stretches()).isEqualTo(12);
        assertThat(factor.median()).isBetween(1.2, 1.3);
        StretchReport taught = StretchReport.of(never, kit, Optional.of(factor), Optional.empty());
        assertThat(taught.estimate().sections())
                .isGreaterThan(report(200, new Length(0)).estimate().sections());
    }

    @Test
    void packageLaidTwiceOrUnknownRefused() {
        Kit kit = BrindleFalls.kit(Optional.empty(), 0, 150);
        String id = kit.packages().keySet().iterator().next();
        assertThatThrownBy(() -> PackageChain.of(kit, List.of(id, id))).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> PackageChain.of(kit, List.of())).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> PackageChain.of(kit, List.of("none"))).isInstanceOf(InvalidInput.class);
    }
}
