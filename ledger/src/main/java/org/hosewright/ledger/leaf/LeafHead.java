package org.hosewright.ledger.leaf;

import org.hosewright.ledger.history.Mark;

/** A leaf without its content.
 *
 * @param kind what it holds
 * @param id unique within its kind
 * @param version from 1, one more with each change
 * @param title what people call it
 * @param mark who saved this version, when and why
 */
public record LeafHead(LeafKind kind, String id, long version, String title, Mark mark) {}
