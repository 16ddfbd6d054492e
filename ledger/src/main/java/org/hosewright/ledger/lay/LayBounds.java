package org.hosewright.ledger.lay;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.limit.Bounds;
import org.hosewright.hydraulics.limit.TestAge;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitLines;

/** What a kit sets for a lay: the engine's ceiling and rating, and the age of its hoses' tests. */
final class LayBounds {
    private LayBounds() {}

    static Bounds of(Kit kit, Laid laid, LayState state, Optional<LocalDate> today) {
        Map<String, TestAge> ages = new LinkedHashMap<>();
        for (LayState.AtTip tip : state.tips()) {
            for (Run run : tip.path().runs()) {
                String hose = run.hose().id();
                ages.put(hose, KitBounds.age(KitLines.get(kit.hoses(), hose, "hose"), today));
            }
        }
        return Bounds.of(KitLines.get(kit.engines(), laid.engine(), "engine of the lay")
                        .engine())
                .withHoseTests(ages);
    }
}
