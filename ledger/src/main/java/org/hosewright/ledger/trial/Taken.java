package org.hosewright.ledger.trial;

import org.hosewright.evidence.trial.Measure;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;

/** What the needles showed in one reading of a trial. */
public sealed interface Taken {
    /** The measure that it serves. */
    Measure measure();

    /** What is compared. */
    Quantity value();

    /** Pump and tip gauge, while the trial's flow was held. */
    record Drop(Pressure pump, Pressure tip) implements Taken {
        public Drop {
            Numbers.requirePositive("pump pressure", pump.pascals());
            Numbers.requirePositive("tip pressure", tip.pascals());
            if (tip.pascals() >= pump.pascals()) {
                throw new InvalidInput(
                        "tip pressure", Numbers.plain(tip.psi()) + " psi", "a pressure below the pump's", "");
            }
        }

        @Override
        public Measure measure() {
            return Measure.LOSS;
        }

        @Override
        public Quantity value() {
            return new Pressure(pump.pascals() - tip.pascals());
        }
    }

    /** The meter, while the trial's tip pressure was held. */
    record Through(Flow flow) implements Taken {
        public Through {
            Numbers.requirePositive("flow", flow.si());
        }

        @Override
        public Measure measure() {
            return Measure.FLOW;
        }

        @Override
        public Quantity value() {
            return flow;
        }
    }
}
