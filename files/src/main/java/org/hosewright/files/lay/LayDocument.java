package org.hosewright.files.lay;

import java.time.LocalDate;
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
import org.hosewright.hydraulics.quantity.Pressure;

/** A lay as the file says it, by the company's names: what is laid from an engine, and what is asked of it.
 *
 * @param engine id of the engine
 * @param supply what feeds it, where stated
 * @param lines from each discharge; not empty
 * @param joins what follows where lines join again, by the name of the join
 * @param ask what is asked
 */
public record LayDocument(
        String engine, Optional<Supply> supply, List<LaidLine> lines, Map<String, Joint> joins, Ask ask) {
    public LayDocument {
        lines = List.copyOf(lines);
        joins = Collections.unmodifiableMap(new LinkedHashMap<>(joins));
    }

    /** What feeds the engine.
     *
     * @param hydrant its flow test, where it is a hydrant
     * @param hose chain from the hydrant to the pump; may be empty
     * @param rise pump above the hydrant, negative downhill
     * @param keep the lowest pressure to keep at the intake, where stated
     */
    public record Supply(
            Optional<Hydrant> hydrant, List<Stretch> hose, Optional<Length> rise, Optional<Pressure> keep) {
        public Supply {
            hose = List.copyOf(hose);
        }
    }

    /** A hydrant's flow test.
     *
     * @param still pressure with nothing flowing
     * @param residual pressure at the test's flow
     * @param at the test's flow
     * @param tested its day, where known
     */
    public record Hydrant(Pressure still, Pressure residual, Flow at, Optional<LocalDate> tested) {}

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
     * @param hose chain in laying order; empty only where a nozzle or an appliance stands straight on a piece
     * @param rise its end above its start, negative downhill
     * @param crew people at the nozzle, where stated
     * @param end what it ends in
     */
    public record Leg(List<Stretch> hose, Optional<Length> rise, OptionalInt crew, End end) {
        public Leg {
            hose = List.copyOf(hose);
        }
    }

    /** What a chain of hose ends in. */
    public sealed interface End {
        /** A nozzle in one setting, open or shut. */
        record Tip(String nozzle, String setting, boolean shut) implements End {}

        /** A wye with its legs by name. */
        record Wye(Optional<String> appliance, Map<String, Leg> legs) implements End {
            public Wye {
                legs = Collections.unmodifiableMap(new LinkedHashMap<>(legs));
            }
        }

        /** A join with other lines, by its name. */
        record Join(String name) implements End {}

        /** A piece that the program knows by name and does not read further yet.
         *
         * @param word its word in the file
         */
        record Piece(String word) implements End {}
    }
}
