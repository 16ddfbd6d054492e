package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.instrument.Tap;
import org.junit.jupiter.api.Test;

/** Two wrong readings of one night without a meter hide each other in the scatter that they make; both are found. */
class MaskingTest {
    /** Place of the reading that the example night has 13 psi high. */
    private static final int SEVENTH = 6;

    /** What the example's hose comes out at without any meter and with only good readings [psi/100ft@100gpm]. */
    private static final double HOSE = 9.2;

    private static final double NEAR = 0.2;

    private static Calibration without(int other, double more_psi) {
        List<Row> rows = new ArrayList<>();
        ExampleNight.rows().forEach(row -> rows.add(row.flow(-1)));
        rows.set(other, rows.get(other).pump(rows.get(other).pump() + more_psi));
        return Calibration.of(ExampleNight.gear(new Tap.Pitot())
                .rows(rows.toArray(new Row[0]))
                .night());
    }

    private static void checkBothAreSetAside(double more_psi) {
        for (int other = 0; other < ExampleNight.rows().size(); other++) {
            if (other != SEVENTH) {
                Calibration night = without(other, more_psi);
                List<String> aside = night.readings().stream()
                        .filter(judged -> !judged.used())
                        .map(Judged::reading)
                        .toList();
                String label = more_psi + " psi in reading " + (other + 1);
                assertThat(aside).as(label).containsExactlyInAnyOrder("7", String.valueOf(other + 1));
                assertThat(night.terms().hoses().get("attack-175").value().us())
                        .as(label)
                        .isCloseTo(HOSE, within(NEAR));
            }
        }
    }

    @Test
    void twoHighReadingsAreBothFoundHolds() {
        checkBothAreSetAside(13);
        checkBothAreSetAside(20);
        checkBothAreSetAside(30);
    }

    @Test
    void aHighAndALowReadingAreBothFoundHolds() {
        checkBothAreSetAside(-20);
    }
}
