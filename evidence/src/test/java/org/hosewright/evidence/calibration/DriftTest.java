package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.junit.jupiter.api.Test;

/** An instrument that goes off steadily through a night is named, with how much; a clean night's are not. */
class DriftTest {
    private static final long FIRST_SEED = 141;
    private static final int NIGHTS = 2;
    private static final int CLEAN_NIGHTS = 12;

    /** What goes off, by how much at the last reading. */
    private interface Spoil {
        Row at(Row row, double share);
    }

    private static void check(FindingKind kind, Spoil spoil) {
        for (Truth truth : PlantedFaultsTest.nights(FIRST_SEED, NIGHTS)) {
            List<Row> rows = new ArrayList<>();
            for (int i = 0; i < truth.rows.size(); i++) {
                rows.add(spoil.at(truth.rows.get(i), (double) i / (truth.rows.size() - 1)));
            }
            Calibration night =
                    Calibration.of(truth.gear().rows(rows.toArray(new Row[0])).night());
            assertThat(night.readings())
                    .as("first seed " + FIRST_SEED)
                    .anyMatch(judged -> judged.finding().says().contains("drifts")
                            && (judged.finding().kind() == kind
                                    || judged.finding().also().contains(kind)));
        }
    }

    @Test
    void aDriftingMeterIsNamedHolds() {
        check(FindingKind.FLOW_METER, (row, share) -> row.flow() < 0 ? row : row.flow(row.flow() * (1 + 0.1 * share)));
        check(FindingKind.FLOW_METER, (row, share) -> row.flow() < 0 ? row : row.flow(row.flow() * (1 - 0.2 * share)));
    }

    @Test
    void aDriftingTipGaugeIsNamedHolds() {
        check(FindingKind.TIP_GAUGE, (row, share) -> row.tip(row.tip() - 6 * share));
        check(FindingKind.TIP_GAUGE, (row, share) -> row.tip(row.tip() - 10 * share));
    }

    @Test
    void noDriftOfACleanNightIsNamedHolds() {
        int named = 0;
        for (Truth truth : PlantedFaultsTest.nights(FIRST_SEED, CLEAN_NIGHTS)) {
            named += (int) Calibration.of(truth.night()).readings().stream()
                    .filter(judged -> judged.finding().says().contains("drifts"))
                    .count();
        }
        assertThat(named).as("first seed " + FIRST_SEED).isZero();
    }
}
