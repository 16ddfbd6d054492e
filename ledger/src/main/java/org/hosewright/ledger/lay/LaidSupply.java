package org.hosewright.ledger.lay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.supply.HydrantCurve;
import org.hosewright.hydraulics.supply.SupplyLine;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** A hydrant with the hose from it to the pump, by the company's names.
 *
 * @param hydrant its flow test
 * @param tested the day of that test, where known
 * @param hose chain from the hydrant to the pump; empty where the pump stands at it
 * @param rise pump above the hydrant, negative downhill; absent where nobody wrote it down
 * @param keep lowest pressure to keep at the intake, where stated
 */
public record LaidSupply(
        HydrantCurve hydrant,
        Optional<LocalDate> tested,
        List<Stretch> hose,
        Optional<Length> rise,
        Optional<Pressure> keep) {
    /** What is kept at an intake where nobody stated more. @source common practice: 20 psi */
    static final Pressure USUAL_KEEP = Pressure.ofPsi(20);

    public LaidSupply {
        hose = List.copyOf(hose);
    }

    /** The supply as it can be solved. */
    SupplyLine line(Kit kit) {
        List<Run> runs = KitLines.runs(kit, hose, rise.orElse(new Length(0)));
        return new SupplyLine(hydrant, runs, keep.orElse(USUAL_KEEP));
    }

    /** What people should know about the hydrant's test, as sentences. */
    List<String> cautions() {
        List<String> says = new ArrayList<>();
        says.add(tested.map(day -> "The hydrant was tested on " + day + ": it may give less today.")
                .orElse("The day of the hydrant's test is not known: it may give less today."));
        if (hydrant.isWeakTest()) {
            says.add(
                    "The hydrant's test drew its pressure down by less than a tenth: what it gives beyond is a guess.");
        }
        return says;
    }

    /** What is taken for granted about it, as sentences. */
    List<String> assumed(Kit kit) {
        List<String> assumed = new ArrayList<>();
        if (rise.isEmpty()) {
            assumed.add("No rise is stated from the hydrant: the pump is taken level with it.");
        }
        if (keep.isEmpty()) {
            String usual = QuantityShown.of(kit.units()).text(USUAL_KEEP);
            assumed.add("No lowest intake pressure is stated: " + usual + " is kept.");
        }
        return assumed;
    }
}
