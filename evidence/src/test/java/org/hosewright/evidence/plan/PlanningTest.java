package org.hosewright.evidence.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.limit.Limit;
import org.hosewright.hydraulics.limit.TestAge;
import org.junit.jupiter.api.Test;

class PlanningTest {
    /** The last digits of a unit conversion [psi]. */
    private static final double CONVERSION_psi = 1e-6;

    @Test
    void safety08NoPointAboveNineTenthsOfTheServiceTestOrAnyOtherLimit() {
        for (double rise_ft : new double[] {-60, 0, 40}) {
            ExamplePlan example = new ExamplePlan();
            example.test_psi = 200;
            example.rise_ft = rise_ft;
            Plan plan = example.plan(Question.HOSE, Question.PIPING);
            for (TestPoint point : plan.points()) {
                double head_psi = Math.max(0, -0.434 * point.line().rise().feet());
                assertThat(point.state().pump().psi() + head_psi).isLessThanOrEqualTo(180 + 0.5);
                assertThat(point.limits()).noneMatch(Limit::broken);
                assertThat(point.state().reaction().lbf()).isLessThanOrEqualTo(75);
                assertThat(point.never().orElseThrow().psi()).isLessThanOrEqualTo(180 - head_psi + 0.5);
                assertThat(point.state().pump().psi())
                        .isLessThanOrEqualTo(point.never().orElseThrow().psi() + CONVERSION_psi);
            }
        }
    }

    @Test
    void safety08HoseOutOfDateOrTooOldIsNotPlanned() {
        for (TestAge age : List.of(TestAge.OVERDUE, TestAge.UNDATED, TestAge.TOO_OLD)) {
            ExamplePlan example = new ExamplePlan();
            example.age = age;
            assertThatThrownBy(() -> example.plan(Question.HOSE))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessageContaining("attack-175")
                    .hasMessageContaining(age == TestAge.TOO_OLD ? "July 1987" : "service test");
        }
    }

    @Test
    void safety09AShutReadingIsAtIdlePressure() {
        Plan plan = new ExamplePlan().plan(Question.values());
        assertThat(plan.points()).anyMatch(TestPoint::shut);
        plan.points().stream()
                .filter(TestPoint::shut)
                .forEach(point -> assertThat(point.state().pump()).isEqualTo(Checked.IDLE));
    }

    @Test
    void oneLengthWarnsThatHoseAndPipingCannotBePartedHolds() {
        ExamplePlan example = new ExamplePlan();
        example.onHand_ft = 50;
        Plan plan = example.plan(Question.HOSE, Question.PIPING);
        assertThat(plan.warnings()).anyMatch(says -> says.contains("only as a sum"));
        assertThat(plan.withheld()).anyMatch(withheld -> withheld.what().equals("loss of attack-175"));
    }

    @Test
    void aPlanWithoutAnAnchorSaysSoHolds() {
        ExamplePlan example = new ExamplePlan();
        example.gauged = false;
        example.metered = false;
        Plan plan = example.plan(Question.HOSE, Question.NOZZLE);
        assertThat(plan.warnings()).anyMatch(says -> says.startsWith("Nothing fixes the scale of flow"));
        assertThat(plan.withheld()).anyMatch(withheld -> withheld.what().equals("flow factor of seven-eighths"));
    }

    @Test
    void bothCriteriaKeepTheBudgetAndTheRulesHold() {
        for (Optimality optimality : Optimality.values()) {
            for (double hours : new double[] {1, 2, 3}) {
                ExamplePlan example = new ExamplePlan();
                example.hours = hours;
                Plan plan = Planning.of(
                        example.means(), example.budget(), Set.of(Question.HOSE, Question.PIPING), optimality);
                assertThat(plan.time().seconds()).isLessThanOrEqualTo(3600 * hours);
                long lays =
                        plan.points().stream().map(TestPoint::lay).distinct().count();
                assertThat(lays).isGreaterThanOrEqualTo(2);
                assertThat(plan.foreseen())
                        .anyMatch(seen -> seen.what().equals("loss of attack-175")
                                && seen.known().isPresent());
            }
        }
    }

    @Test
    void aMixedOrderDoesNotConfuseTimeWithLengthHolds() {
        List<Double> four = List.of(150.0, 350.0, 550.0, 750.0);
        List<Double> order = Sequence.mixed(four).stream().map(four::get).toList();
        assertThat(Math.abs(Sequence.confusion(order))).isLessThan(Ordered.CONFUSED);
        for (int count = 5; count <= 12; count++) {
            List<Double> many = java.util.stream.IntStream.range(0, count)
                    .mapToObj(i -> 50.0 * i)
                    .toList();
            List<Double> mixed = Sequence.mixed(many).stream().map(many::get).toList();
            assertThat(mixed).containsExactlyInAnyOrderElementsOf(many);
            assertThat(Math.abs(Sequence.confusion(mixed))).as(count + " lays").isLessThan(Ordered.CONFUSED);
        }
    }
}
