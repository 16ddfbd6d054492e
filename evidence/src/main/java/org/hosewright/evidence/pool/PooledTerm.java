package org.hosewright.evidence.pool;

import java.util.Optional;
import org.hosewright.evidence.joint.Role;

/** A number that nights share beside hose.
 *
 * @param kind what it is
 * @param id its name; of an instrument, that of the time between two calibrations
 * @param value in SI
 * @param standardError in SI
 * @param nights how many nights had to do with it
 */
public record PooledTerm(Kind kind, String id, double value, double standardError, int nights) {
    /** What a shared number is. */
    public enum Kind {
        /** What a gauge reads more than the true pressure [Pa]. */
        GAUGE,
        /** What a meter reads over the true flow. */
        METER,
        /** Loss of a discharge's piping [Pa s2/m6]. */
        DISCHARGE,
        /** True flow of a tip over its rated flow. */
        NOZZLE
    }

    /** The kind of a role; absent for what is of no use by itself. */
    static Optional<Kind> findKind(Role role) {
        return switch (role) {
            case OFFSET -> Optional.of(Kind.GAUGE);
            case METER -> Optional.of(Kind.METER);
            case PIPING -> Optional.of(Kind.DISCHARGE);
            case NOZZLE -> Optional.of(Kind.NOZZLE);
            case HOSE, SPAN, TAP, FAULT -> Optional.empty();
        };
    }
}
