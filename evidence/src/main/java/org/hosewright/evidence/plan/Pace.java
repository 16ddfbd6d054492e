package org.hosewright.evidence.plan;

import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Seconds;

/** How long the parts of a test night take.
 *
 * @param setUp people cleared, gauges placed, the briefing
 * @param relay laying, straightening, charging and purging one lay, and draining it
 * @param reading one reading with water flowing: setting, holding, reading, writing
 * @param flowing how much of it the water runs
 * @param still one reading with the nozzle shut
 */
public record Pace(Seconds setUp, Seconds relay, Seconds reading, Seconds flowing, Seconds still) {
    /** Three minutes of water a reading, as drill nights are reckoned; the rest is judgement and can be changed. */
    public static final Pace USUAL =
            new Pace(new Seconds(1200), new Seconds(600), new Seconds(300), new Seconds(180), new Seconds(120));

    public Pace {
        Numbers.requireNotNegative("time to set up", setUp.seconds());
        Numbers.requirePositive("time to lay", relay.seconds());
        Numbers.requirePositive("time for a reading", reading.seconds());
        Numbers.requireWithin("time that water runs for a reading", flowing.seconds(), 0, reading.seconds(), "s");
        Numbers.requirePositive("time for a reading with the nozzle shut", still.seconds());
    }

    /** The same with other times for a reading and a lay; water runs for the same share of a reading. */
    public Pace with(Seconds newReading, Seconds newRelay) {
        double share = flowing.seconds() / reading.seconds();
        return new Pace(setUp, newRelay, newReading, new Seconds(share * newReading.seconds()), still);
    }
}
