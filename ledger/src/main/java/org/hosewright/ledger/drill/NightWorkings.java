package org.hosewright.ledger.drill;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.evidence.calibration.Calibration;
import org.hosewright.hydraulics.working.Working;
import org.hosewright.ledger.kit.Kit;

/** The hand calculations of a night's headline numbers. */
final class NightWorkings {
    private NightWorkings() {}

    static List<Working> of(Kit kit, Calibration calibration, List<TestedLine> lines) {
        return new ArrayList<>();
    }
}
