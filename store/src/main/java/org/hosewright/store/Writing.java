package org.hosewright.store;

import com.github.f4b6a3.uuid.UuidCreator;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.history.Mark;
import org.hosewright.ledger.history.Subject;
import org.jdbi.v3.core.Handle;

/** One act while it is being written. */
final class Writing {
    private final Handle handle;
    private final Mark mark;
    private boolean turnedBack;

    private Writing(Handle handle, Mark mark) {
        this.handle = handle;
        this.mark = mark;
    }

    /** Waits for the turn of this act and takes the next history number. */
    static Writing begin(Handle handle, Act act, Instant now) {
        handle.execute("update history_head set last = last + 1 where id = 1");
        long entry = handle.createQuery("select last from history_head where id = 1")
                .mapTo(Long.class)
                .one();
        return new Writing(handle, new Mark(entry, now.truncatedTo(ChronoUnit.MILLIS), act.who(), act.why()));
    }

    Handle handle() {
        return handle;
    }

    Mark mark() {
        return mark;
    }

    /** A new id, a UUID of version 7 in its text form. */
    String newId() {
        return UuidCreator.getTimeOrderedEpoch(mark.at()).toString();
    }

    /** Writes the history entry of this act. */
    void note(Hat hat, String what, Subject subject, String subjectId, long version) {
        enter(hat.word(), what, subject, subjectId, version);
    }

    /** As {@link #note}, where a person acts for nobody but that person, under no hat. */
    void noteOfOwn(String what, Subject subject, String subjectId, long version) {
        enter("", what, subject, subjectId, version);
    }

    private void enter(String hat, String what, Subject subject, String subjectId, long version) {
        handle.createUpdate("insert into history (entry, at, who, hat, why, what, subject, subject_id, version)"
                        + " values (:entry, :at, :who, :hat, :why, :what, :subject, :subjectId, :version)")
                .bind("entry", mark.entry())
                .bind("at", Marks.text(mark.at()))
                .bind("who", mark.who())
                .bind("hat", hat)
                .bind("why", mark.why())
                .bind("what", what)
                .bind("subject", subject.word())
                .bind("subjectId", subjectId)
                .bind("version", version)
                .execute();
    }

    /** Links the entry to the one before, once the act has written all that it writes. */
    void seal() {
        Chain.close(handle, mark.entry());
    }

    /** Gives the act up: nothing of it will be kept. */
    <T> T turnBack(T outcome) {
        turnedBack = true;
        return outcome;
    }

    boolean turnedBack() {
        return turnedBack;
    }
}
