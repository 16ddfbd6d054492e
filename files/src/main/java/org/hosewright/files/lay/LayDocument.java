package org.hosewright.files.lay;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** A lay as the file says it, by the company's names: what is laid from an engine, and what is asked of it.
 *
 * @param engine id of the engine
 * @param pump how its pump is run, where stated
 * @param supply what feeds it, where stated
 * @param lines from each discharge; not empty
 * @param joins what follows where lines join again, by the name of the join
 * @param ask what is asked
 */
public record LayDocument(
        String engine,
        Optional<Pumping> pump,
        Optional<LaidSource> supply,
        List<LaidLine> lines,
        Map<String, Joint> joins,
        Ask ask) {
    public LayDocument {
        lines = List.copyOf(lines);
        joins = Collections.unmodifiableMap(new LinkedHashMap<>(joins));
    }

    /** How a pump is run. */
    public sealed interface Pumping {
        /** A governor in pressure mode. */
        record Holds(Pressure pressure) implements Pumping {}

        /** A fixed speed: the pump slides along its curve through one point. */
        record FixedSpeed(Pressure at, Flow flow) implements Pumping {}
    }

    /** What is laid from a discharge. */
    public record LaidLine(String discharge, Leg leg) {}

    /** Where lines join again.
     *
     * @param appliance id of the siamese, where one is named
     * @param leg what follows
     */
    public record Joint(Optional<String> appliance, Leg leg) {}

    /** A chain of hose and what it ends in.
     *
     * @param where its place in the file, for errors
     * @param hose chain in laying order; empty only where a nozzle or an appliance stands straight on a piece
     * @param rise its end above its start, negative downhill
     * @param crew people at the nozzle, where stated
     * @param gate how far the gate at its start is shut, where it is
     * @param damage what is wrong with its hose, where something is
     * @param end what it ends in
     */
    public record Leg(
            String where,
            List<Stretch> hose,
            Optional<Length> rise,
            OptionalInt crew,
            Optional<Gate> gate,
            Optional<Damage> damage,
            LaidEnd end) {
        public Leg {
            hose = List.copyOf(hose);
        }
    }

    /** A gate that stands neither open nor shut. */
    public sealed interface Gate {
        /** Half shut, without a figure. */
        record Half() implements Gate {}

        /** Shut so far that it takes a stated loss. */
        record Takes(PointLoss loss) implements Gate {}
    }

    /** What is wrong with a chain of hose. */
    public sealed interface Damage {
        /** A length burst.
         *
         * @param coupling the coupling at its start, counted from the start of the chain, which is 0
         */
        record Burst(int coupling) implements Damage {}

        /** A kink that takes a stated loss. */
        record Kink(PointLoss loss) implements Damage {}
    }
}
