package org.hosewright.files.lay;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.hosewright.files.lay.LayDocument.Leg;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.Volume;

/** What a chain of hose ends in, as the file says it. */
public sealed interface LaidEnd {
    /** The word that the file has for it. */
    String word();

    /** A nozzle in one setting, open or shut. */
    record Tip(String nozzle, String setting, boolean shut) implements LaidEnd {
        @Override
        public String word() {
            return "nozzle";
        }
    }

    /** A wye or a manifold with its legs by name. */
    record Wye(String word, Optional<String> appliance, Map<String, Leg> legs) implements LaidEnd {
        public Wye {
            legs = ordered(legs);
        }
    }

    /** A join with other lines, by its name. */
    record Join(String name) implements LaidEnd {
        @Override
        public String word() {
            return "join";
        }
    }

    /** A monitor.
     *
     * @param appliance id of the device, where it is named
     * @param rise its tip above the ground it stands on, where stated
     * @param tips its tips by name; one tip bears the name of its line
     */
    record Monitor(Optional<String> appliance, Optional<Length> rise, Map<String, Tip> tips) implements LaidEnd {
        public Monitor {
            tips = ordered(tips);
        }

        @Override
        public String word() {
            return "monitor";
        }
    }

    /** A standpipe.
     *
     * @param rise from its connection to the foot of its outlets' own rises
     * @param loss of the riser with the connection, where stated
     * @param outlets by name
     * @param posted the pressure posted at its connection, where there is one
     */
    record Standpipe(
            Optional<Length> rise, Optional<PointLoss> loss, Map<String, Outlet> outlets, Optional<Pressure> posted)
            implements LaidEnd {
        public Standpipe {
            outlets = ordered(outlets);
        }

        @Override
        public String word() {
            return "standpipe";
        }
    }

    /** One outlet of a standpipe.
     *
     * @param rise above the standpipe's own rise
     * @param valve what its valve does
     * @param leg what is laid from it; its own rise is the hose's
     */
    record Outlet(Optional<Length> rise, Valve valve, Leg leg) {}

    /** What the valve of a standpipe's outlet does. */
    sealed interface Valve {
        /** Nothing: it is a plain valve. */
        record Plain() implements Valve {}

        /** Holds a pressure that nobody can set. */
        record FixedReducer(Pressure holds) implements Valve {}

        /** Holds a pressure that a tool sets. */
        record AdjustableReducer(Pressure holds) implements Valve {}

        /** Takes a loss that grows with the flow. */
        record Restrictor(PointLoss loss) implements Valve {}

        /** Nobody knows. */
        record Unknown() implements Valve {}
    }

    /** A valve that holds a pressure behind it. */
    record Reducer(Pressure holds, Leg leg) implements LaidEnd {
        @Override
        public String word() {
            return "pressure-reducer";
        }
    }

    /** A foam eductor.
     *
     * @param flow its rated flow
     * @param inlet the inlet pressure that it is rated at
     * @param backPressure the most it bears behind it, as a share of the inlet pressure
     * @param draws the share of concentrate that it draws
     * @param concentrate how much there is, where stated
     * @param leg what follows
     */
    record Eductor(Flow flow, Pressure inlet, Ratio backPressure, Ratio draws, Optional<Volume> concentrate, Leg leg)
            implements LaidEnd {
        @Override
        public String word() {
            return "eductor";
        }
    }

    /** Sprinkler heads.
     *
     * @param k flow of one head at a pressure of one unit
     * @param at that pressure
     * @param heads how many flow
     */
    record Sprinklers(Flow k, Pressure at, int heads, boolean shut) implements LaidEnd {
        @Override
        public String word() {
            return "sprinklers";
        }
    }

    /** An open butt. */
    record HoseEnd() implements LaidEnd {
        @Override
        public String word() {
            return "hose-end";
        }
    }

    private static <T> Map<String, T> ordered(Map<String, T> map) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(map));
    }
}
