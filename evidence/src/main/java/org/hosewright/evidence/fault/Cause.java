package org.hosewright.evidence.fault;

import java.util.Optional;
import org.hosewright.evidence.joint.Fault;

/** A kind of fault, with how often one meets it.
 *
 * <p>Odds are per reading, from judgement: no published count is known.
 */
public enum Cause {
    EXTRA_LOSS(0.06, Fault.EXTRA_LOSS),
    FLOW_METER(0.02, Fault.FLOW_METER),
    NOZZLE(0.01, Fault.NOZZLE),
    TIP_GAUGE(0.01, Fault.TIP_GAUGE),
    PUMP_GAUGE(0.01, Fault.PUMP_GAUGE),
    /** Whole sections more or fewer than written. */
    LENGTH(0.01, null),
    RISE(0.002, Fault.RISE);

    private final double odds;
    private final Optional<Fault> fault;

    Cause(double odds, @org.jspecify.annotations.Nullable Fault fault) {
        this.odds = odds;
        this.fault = Optional.ofNullable(fault);
    }

    /** Logarithm of the odds beforehand. */
    public double logOdds() {
        return Math.log(odds);
    }

    /** The fault as one more unknown; absent for whole sections, which are counted. */
    Optional<Fault> fault() {
        return fault;
    }
}
