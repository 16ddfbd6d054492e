package org.hosewright.hydraulics.network;

import java.util.List;

/** What was found for the numbers left open, and the network solved with them.
 *
 * @param values the numbers, in the order they were left open
 * @param network the network with them
 * @param state that network solved
 */
public record Found(List<Double> values, Network network, NetworkState state) {
    public Found {
        values = List.copyOf(values);
    }
}
