package org.hosewright.ledger.history;

import java.util.List;

/** The history of the whole record, read only: entries come about by the acts themselves. */
public interface History {
    /** The latest entries, newest first.
     *
     * @param most how many at most
     */
    List<Entry> listLatest(int most);

    /** The latest entries about one subject, newest first.
     *
     * @param subjectId id of the subject; "kit" for the kit
     * @param most how many at most
     */
    List<Entry> listAbout(Subject subject, String subjectId, int most);

    /** Proves the chain from the first entry on: each hash anew from what stands in the record now. */
    Audit audit();
}
