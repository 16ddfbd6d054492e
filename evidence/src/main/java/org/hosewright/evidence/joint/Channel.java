package org.hosewright.evidence.joint;

/** What one of a reading's needles shows. */
public enum Channel {
    PUMP,
    TIP,
    MID,
    FLOW
}
