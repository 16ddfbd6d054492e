package org.hosewright.ledger.lay;

import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.HalfGate;
import org.hosewright.hydraulics.lay.Lay;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.WhatIf;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** One thing that may happen to a lay while nobody touches its pump and gates; places are tips, discharges or joins. */
public sealed interface LayChange {

    /** What it does.
     *
     * @param before the lay as it was asked for
     * @throws InvalidInput a tip, hose or nozzle that is not there; it is named
     */
    WhatIf of(Kit kit, Lay lay, LayState before);

    /** What of it is an estimate, as a sentence. */
    default Optional<String> findEstimate() {
        return Optional.empty();
    }

    /** A tip opens that is shut, or shuts that is open. */
    record Turned(String tip, boolean opens) implements LayChange {
        @Override
        public WhatIf of(Kit kit, Lay lay, LayState before) {
            boolean shut = before.getTip(tip).outlet().shut();
            if (shut != opens) {
                throw new InvalidInput(
                        "a tip that " + (opens ? "opens" : "shuts"),
                        tip + ", " + (shut ? "shut" : "open") + " already",
                        "one that is " + (opens ? "shut" : "open") + " in the lay",
                        "");
            }
            return WhatIf.turned(lay, before, tip);
        }
    }

    /** Another nozzle or setting at a tip. */
    record Tip(String tip, String nozzle, String setting) implements LayChange {
        @Override
        public WhatIf of(Kit kit, Lay lay, LayState before) {
            return WhatIf.tip(lay, before, tip, KitLines.nozzle(kit, nozzle, setting), setting);
        }
    }

    /** A coupling lets go. */
    record Burst(String place, int coupling) implements LayChange {
        @Override
        public WhatIf of(Kit kit, Lay lay, LayState before) {
            return WhatIf.burst(lay, before, place, coupling);
        }
    }

    /** A kink. */
    record Kinked(String place, PointLoss loss) implements LayChange {
        @Override
        public WhatIf of(Kit kit, Lay lay, LayState before) {
            return WhatIf.kinked(lay, before, place, loss);
        }
    }

    /** A gate part shut; where its loss is not stated, half shut with the estimate for its hose's size. */
    record Gated(String place, Optional<PointLoss> loss) implements LayChange {
        @Override
        public WhatIf of(Kit kit, Lay lay, LayState before) {
            return loss.map(stated -> WhatIf.gated(lay, before, place, stated))
                    .orElseGet(() -> WhatIf.gated(
                            lay,
                            before,
                            place,
                            HalfGate.of(WhatIf.hose(lay, place).diameter())));
        }

        @Override
        public Optional<String> findEstimate() {
            return loss.isPresent()
                    ? Optional.empty()
                    : Optional.of("What the half-shut gate takes is an estimate for a ball valve of its hose's size.");
        }
    }

    /** Every hydrant gives a share of its test. */
    record WeakerHydrant(Ratio share) implements LayChange {
        @Override
        public WhatIf of(Kit kit, Lay lay, LayState before) {
            return WhatIf.weakerHydrant(lay, before, share);
        }
    }
}
