package org.hosewright.ledger.history;

import java.time.Instant;

/** Who did something, when and why, as it was recorded.
 *
 * @param entry number of the history entry that records it, from 1
 * @param at when, by the clock of the machine that keeps the record
 * @param who the person
 * @param why the reason; empty where none was given
 */
public record Mark(long entry, Instant at, String who, String why) {}
