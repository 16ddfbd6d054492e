package org.hosewright.files.kit;

import java.util.List;
import java.util.Map;
import org.hosewright.evidence.instrument.Accuracy;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.Unit;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.hydraulics.quantity.Volume;
import org.hosewright.ledger.kit.Coupling;
import org.hosewright.ledger.kit.HoseRecord;

/** How quantities stand in a kit file of one unit system.
 *
 * @param units the units
 * @param rounded whether what has a standard error is written to three digits of it; else all of it reads back exactly
 */
record Written(UnitSystem units, boolean rounded) {
    String pressure(Pressure pressure) {
        return shown().file(pressure, units.pressure());
    }

    String flow(Flow flow) {
        return shown().file(flow, units.flow());
    }

    String force(Force force) {
        return shown().file(force, units.force());
    }

    String volume(Volume volume) {
        return shown().file(volume, units == UnitSystem.US ? Unit.GAL : Unit.L);
    }

    String length(Length length) {
        return shown().file(length, units.length());
    }

    /** A bore or a diameter. */
    String size(Length size) {
        return shown().file(size, units == UnitSystem.US ? Unit.IN : Unit.MM);
    }

    String known(Known<?> known) {
        return rounded ? shown().fileTextRounded(known) : shown().fileText(known);
    }

    String chain(List<Stretch> chain, Map<String, HoseRecord> hoses) {
        return Chain.text(chain, hoses, this);
    }

    String accuracy(Accuracy accuracy) {
        String share = shown().file(new Ratio(accuracy.share()), Unit.PERCENT);
        return share + (accuracy.of() == Accuracy.Of.RANGE ? " of range" : " of reading");
    }

    String coupling(Coupling coupling) {
        return size(coupling.size()) + " " + coupling.kind();
    }

    String tap(Tap tap) {
        if (tap instanceof Tap.Side side) {
            return "side" + side.inside().map(inside -> " " + size(inside)).orElse("");
        }
        return tap instanceof Tap.Pitot ? "pitot" : tap instanceof Tap.AtDischarge ? "discharge" : "before piping";
    }

    private QuantityShown shown() {
        return QuantityShown.of(units);
    }
}
