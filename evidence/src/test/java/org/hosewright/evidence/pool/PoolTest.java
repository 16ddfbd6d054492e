package org.hosewright.evidence.pool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What nights are worth to a number, and a change over years, against what can be worked out by hand. */
class PoolTest {
    private static final double BATCHES = 0.04;
    private static final double NIGHTS = 0.02;
    private static final double[] LOGS = {Math.log(BATCHES), Math.log(NIGHTS)};
    private static final double[] FOUND = {-0.40, -0.46, -0.43};
    private static final double[] DEVIATIONS = {0.01, 0.03, 0.02};

    /** Rounding of some dozen operations. */
    private static final double AGREE = 1e-9;

    /** Two nights of one batch and one of another, in one year: the mean of both weighs batches, each batch its nights. */
    @Test
    void worthOfNightsIsTheirWeightAgrees() {
        Hierarchy hierarchy = threeNights(0).hierarchy();
        Mixed problem = hierarchy.problem();
        int type = hierarchy.places().type(ManyYears.TYPE.id());
        Solved solved = problem.at(LOGS);
        double first = weight(0) + weight(1);
        double ofFirst = 1 / (BATCHES * BATCHES + 1 / first);
        double ofOther = 1 / (BATCHES * BATCHES + 1 / weight(2));
        double whole = ofFirst + ofOther + 1 / (ManyYears.TYPE.deviation() * ManyYears.TYPE.deviation());
        double meanOfFirst = (weight(0) * FOUND[0] + weight(1) * FOUND[1]) / first;
        assertThat(solved.mean(type)).isCloseTo((ofFirst * meanOfFirst + ofOther * FOUND[2]) / whole, within(AGREE));
        assertThat(solved.variances()[type]).isCloseTo(1 / whole, within(AGREE));
        Shares shares = new Shares(hierarchy, problem, LOGS, solved.covariances(type));
        assertThat(share(shares, "night 1")).isCloseTo(ofFirst / whole * weight(0) / first, within(AGREE));
        assertThat(share(shares, "night 3")).isCloseTo(ofOther / whole, within(AGREE));
        assertThat(shares.list().stream().mapToDouble(NightShare::share).sum() + shares.ofBelief())
                .isCloseTo(1, within(AGREE));
    }

    /** A night that finds otherwise moves the number by its worth times that. */
    @Test
    void nightMovesTheNumberByItsWorthHolds() {
        double moved = 0.1;
        Hierarchy hierarchy = threeNights(moved).hierarchy();
        Mixed problem = hierarchy.problem();
        int type = hierarchy.places().type(ManyYears.TYPE.id());
        Shares shares = new Shares(hierarchy, problem, LOGS, problem.at(LOGS).covariances(type));
        double before = threeNights(0).hierarchy().problem().at(LOGS).mean(type);
        assertThat(problem.at(LOGS).mean(type) - before).isCloseTo(share(shares, "night 2") * moved, within(AGREE));
    }

    /** A change of 4 % a year, batches flown again: it is said. */
    @Test
    void driftOfBatchesFlownAgainHolds() {
        ManyYears years = new ManyYears().batch("a", 2015).batch("b", 2018);
        for (int year = 2020; year <= 2026; year += 2) {
            years.night(year, "a", -0.4 + 0.04 * (year - 2026) + wobble(year), 0.015);
            years.night(year, "b", -0.5 + 0.04 * (year - 2026) - wobble(year), 0.015);
        }
        YearDrift drift = years.type().drift();
        assertThat(drift.standing()).isEqualTo(YearDrift.Standing.SHOWN);
        assertThat(Math.abs(drift.perYear() - 0.04)).isLessThan(2 * drift.standardError());
    }

    /** The same hose year after year: no drift is said. */
    @Test
    void steadyHoseShowsNoDriftHolds() {
        ManyYears years = new ManyYears().batch("a", 2015).batch("b", 2018);
        for (int year = 2018; year <= 2026; year += 2) {
            years.night(year, "a", -0.4 + wobble(year), 0.015);
            years.night(year, "b", -0.5 - wobble(year), 0.015);
        }
        assertThat(years.type().drift().standing()).isEqualTo(YearDrift.Standing.NOT_SHOWN);
    }

    /** Newer batches lose less, each flown in one year only: a change in time and a difference of batches look the same. */
    @Test
    void driftIsWithheldWhereItMayBeTheBatchHolds() {
        ManyYears years = new ManyYears()
                .batch("a", 2015)
                .batch("b", 2018)
                .batch("c", 2021)
                .batch("d", 2024);
        for (int i = 0; i < 4; i++) {
            years.night(2020 + 2 * i, years.batches.get(i).id(), -0.2 - 0.08 * i, 0.01);
        }
        TypeLoss type = years.type();
        assertThat(type.drift().standing()).isEqualTo(YearDrift.Standing.CANNOT_TELL);
        assertThat(type.loss()).isPresent();
    }

    /** A night that hardly knows leaves the number withheld. */
    @Test
    void looseNightAloneIsWithheldHolds() {
        TypeLoss type =
                new ManyYears().batch("a", 2015).night(2026, "a", -0.2, 0.3).type();
        assertThat(type.loss()).isEmpty();
        assertThat(type.batches().get(0).loss()).isEmpty();
    }

    private static double wobble(int year) {
        return year % 4 == 0 ? 0.01 : -0.01;
    }

    private static double weight(int night) {
        return 1 / (DEVIATIONS[night] * DEVIATIONS[night] + NIGHTS * NIGHTS);
    }

    private static double share(Shares shares, String night) {
        return shares.list().stream()
                .filter(share -> share.night().equals(night))
                .mapToDouble(NightShare::share)
                .sum();
    }

    private static ManyYears threeNights(double moved) {
        ManyYears years = new ManyYears();
        years.batches.add(new Batch("a", ManyYears.TYPE.id(), OptionalDouble.empty()));
        years.batches.add(new Batch("b", ManyYears.TYPE.id(), OptionalDouble.empty()));
        for (int night = 0; night < 3; night++) {
            double found = FOUND[night] + (night == 1 ? moved : 0);
            years.night(2026, night == 2 ? "b" : "a", found, DEVIATIONS[night]);
        }
        return years;
    }
}
