package org.hosewright.hydraulics.network;

import org.hosewright.hydraulics.quantity.Numbers;

/** What an answer is asked to be.
 *
 * @param isFlow true for the flow of a link [m3/s], false for the head of a free node [Pa]
 * @param at the link or the node
 * @param value what it shall be
 */
public record Wanted(boolean isFlow, String at, double value) {
    public Wanted {
        Numbers.requireFinite("answer asked for at " + at, value);
    }

    public static Wanted flow(String link, double flow_m3s) {
        return new Wanted(true, link, flow_m3s);
    }

    public static Wanted head(String node, double head_Pa) {
        return new Wanted(false, node, head_Pa);
    }
}
