package org.hosewright.evidence.joint;

/** What an unknown of a night stands for. */
public enum Role {
    /** Loss of a hose [Pa s2/m7], known beforehand by its logarithm. */
    HOSE(true),
    /** Loss of a discharge's piping [Pa s2/m6], never below 0. */
    PIPING(false),
    /** True flow of a tip over its rated flow, known beforehand by its logarithm. */
    NOZZLE(true),
    /** A meter's reading over the true flow, known beforehand by its logarithm. */
    METER(true),
    /** A gauge's reading less the true pressure [Pa]. */
    OFFSET(false),
    /** A gauge's reading over the true pressure, less 1. */
    SPAN(false),
    /** The share of the tip's pressure that a side tap of unknown diameter misses. */
    TAP(false),
    /** A fault that is being weighed. */
    FAULT(false);

    private final boolean logarithmic;

    Role(boolean logarithmic) {
        this.logarithmic = logarithmic;
    }

    /** True where the prior is normal on the logarithm. */
    public boolean isLogarithmic() {
        return logarithmic;
    }

    /** True for what is asked of the line; the rest is asked of instruments and tips. */
    public boolean isLine() {
        return this == HOSE || this == PIPING;
    }
}
