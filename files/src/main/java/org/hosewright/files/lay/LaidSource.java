package org.hosewright.files.lay;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Temperature;
import org.hosewright.hydraulics.quantity.Volume;
import org.hosewright.ledger.kit.Coupling;

/** What feeds an engine, as the file says it.
 *
 * @param where its place in the file, for errors
 * @param from where the water comes from; absent where only the hose is stated
 * @param hose chain from there to the pump; may be empty
 * @param rise pump above it, negative downhill
 * @param keep the lowest pressure to keep at the intake, where stated
 * @param relay engines between, in order from the source
 * @param lines further supplies beside each other; then {@code from} and {@code hose} are empty
 */
public record LaidSource(
        String where,
        Optional<From> from,
        List<Stretch> hose,
        Optional<Length> rise,
        Optional<Pressure> keep,
        List<Pumper> relay,
        List<LaidSource> lines) {
    public LaidSource {
        hose = List.copyOf(hose);
        relay = List.copyOf(relay);
        lines = List.copyOf(lines);
    }

    /** Where the water comes from. */
    public sealed interface From {
        String word();
    }

    /** A hydrant's flow test.
     *
     * @param still pressure with nothing flowing
     * @param residual pressure at the test's flow
     * @param at the test's flow
     * @param tested its day, where known
     * @param coupling of its outlet, where stated
     */
    public record Hydrant(
            Pressure still, Pressure residual, Flow at, Optional<LocalDate> tested, Optional<Coupling> coupling)
            implements From {
        @Override
        public String word() {
            return "hydrant";
        }
    }

    /** The engine's own tank.
     *
     * @param level how much water is in it
     * @param loss from the tank to the pump, where stated
     * @param most the most that this path passes, where stated
     */
    public record Tank(Volume level, Optional<PointLoss> loss, Optional<Flow> most) implements From {
        @Override
        public String word() {
            return "tank";
        }
    }

    /** Open water below the pump.
     *
     * @param lift pump above the water
     * @param hose suction hose
     * @param strainer its loss, where stated
     * @param altitude above the sea, where stated
     * @param temperature of the water, where stated
     */
    public record Draft(
            Length lift,
            List<Stretch> hose,
            Optional<PointLoss> strainer,
            Optional<Length> altitude,
            Optional<Temperature> temperature)
            implements From {
        public Draft {
            hose = List.copyOf(hose);
        }

        @Override
        public String word() {
            return "draft";
        }
    }

    /** An engine of a relay.
     *
     * @param engine its id
     * @param discharge id of the discharge that feeds the next
     * @param hose from there to the next engine's intake
     * @param rise the next engine above it, negative downhill
     * @param pump its pump pressure; absent is what leaves the next intake what is kept
     */
    public record Pumper(
            String where,
            String engine,
            String discharge,
            List<Stretch> hose,
            Optional<Length> rise,
            Optional<Pressure> pump) {
        public Pumper {
            hose = List.copyOf(hose);
        }
    }
}
