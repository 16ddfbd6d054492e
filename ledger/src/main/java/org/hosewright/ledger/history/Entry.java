package org.hosewright.ledger.history;

/** One act in the history. Entries are numbered from 1 without a gap, and none is ever changed.
 *
 * @param mark who, when, why
 * @param hat what the person acted as, in a word; empty for acts older than the hats
 * @param what what was done, as a sentence part ("added 3 readings")
 * @param subject what it was done to
 * @param subjectId id of the subject; "kit" for the kit
 * @param version the subject's version after it
 * @param hash hash over the entry, all that the act wrote, and the hash of the entry before
 */
public record Entry(Mark mark, String hat, String what, Subject subject, String subjectId, long version, String hash) {}
