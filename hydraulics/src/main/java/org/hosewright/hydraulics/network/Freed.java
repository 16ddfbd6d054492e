package org.hosewright.hydraulics.network;

/** A number of a network that is left open, to be found from what is wanted.
 *
 * @param isHead true for the head of a fixed node, false for a number of a link's law
 * @param of the node or the link
 * @param coefficient which number of the law; 0 for a head
 */
public record Freed(boolean isHead, String of, int coefficient) {

    /** The head of a fixed node: the pressure that a pump shall hold. */
    public static Freed head(String node) {
        return new Freed(true, node, 0);
    }

    /** A number of a law: how far a gate shall be shut. */
    public static Freed coefficient(String link, int at) {
        return new Freed(false, link, at);
    }
}
