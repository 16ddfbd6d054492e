package org.hosewright.hydraulics.network;

import java.util.Arrays;
import org.hosewright.hydraulics.network.sparse.Pattern;

/** What of a network does not hang on its numbers: who is joined to whom, and the pattern of its factor.
 *
 * <p>Nodes have places: the free ones first, in the order that the factor eliminates them, then the fixed ones.
 */
final class Shape {
    private final int free;
    private final int[] placeOf;
    private final int[] from;
    private final int[] to;
    private final int[] slot;
    private final int[] ground;
    private final Pattern pattern;

    /** Compiles who is joined to whom.
     *
     * @param fixed which nodes have a fixed head
     * @param fromNode the node at each link's first end
     * @param toNode the node at each link's second end
     */
    Shape(boolean[] fixed, int[] fromNode, int[] toNode) {
        placeOf = new int[fixed.length];
        int count = 0;
        for (int i = 0; i < fixed.length; i++) {
            placeOf[i] = fixed[i] ? -1 : count++;
        }
        free = count;
        pattern = Pattern.of(free, ends(fromNode, toNode));
        for (int i = 0; i < fixed.length; i++) {
            placeOf[i] = fixed[i] ? count++ : pattern.place(placeOf[i]);
        }
        from = new int[fromNode.length];
        to = new int[toNode.length];
        slot = new int[from.length];
        ground = new int[from.length];
        for (int k = 0; k < from.length; k++) {
            from[k] = placeOf[fromNode[k]];
            to[k] = placeOf[toNode[k]];
            int near = Math.min(from[k], to[k]);
            ground[k] = !isAtFixed(k) || near >= free ? free : near;
        }
        pattern.slots(from, to, slot);
    }

    /** Whether a link has a fixed node at an end. */
    boolean isAtFixed(int link) {
        return Math.max(from[link], to[link]) >= free;
    }

    int nodes() {
        return placeOf.length;
    }

    /** Count of nodes whose head is to be found; their places are below it. */
    int free() {
        return free;
    }

    int links() {
        return from.length;
    }

    int placeOf(int node) {
        return placeOf[node];
    }

    int[] from() {
        return from;
    }

    int[] to() {
        return to;
    }

    /** The factor's slot of each link that joins two free nodes, its idle slot for others. */
    int[] slot() {
        return slot;
    }

    /** The place of the free end of each link that joins one to a fixed node, the idle place for others. */
    int[] ground() {
        return ground;
    }

    Pattern pattern() {
        return pattern;
    }

    private int[] ends(int[] fromNode, int[] toNode) {
        int[] ends = new int[2 * fromNode.length];
        int count = 0;
        for (int k = 0; k < fromNode.length; k++) {
            int one = placeOf[fromNode[k]];
            int other = placeOf[toNode[k]];
            if (one >= 0 && other >= 0) {
                ends[count++] = one;
                ends[count++] = other;
            }
        }
        return Arrays.copyOf(ends, count);
    }
}
