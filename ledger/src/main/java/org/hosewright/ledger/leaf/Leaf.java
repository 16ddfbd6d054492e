package org.hosewright.ledger.leaf;

import org.hosewright.ledger.history.Mark;

/** One version of one thing that the company keeps, whole.
 *
 * @param kind what it holds
 * @param id small letters, digits and hyphens; unique within its kind
 * @param version from 1, one more with each change
 * @param title what people call it
 * @param text its content, character for character as it was saved
 * @param mark who saved this version, when and why
 */
public record Leaf(LeafKind kind, String id, long version, String title, String text, Mark mark) {
    public LeafHead head() {
        return new LeafHead(kind, id, version, title, mark);
    }
}
