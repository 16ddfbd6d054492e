package org.hosewright.store;

import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.function.Function;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.storage.StorageFailure.Kind;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** Reads on one snapshot; writes one at a time, each an act with its history entry, kept whole or not at all. */
final class Transactions {
    private final Pools pools;
    private final Jdbi reader;
    private final Jdbi writer;
    private final Clock clock;

    Transactions(Pools pools, Clock clock) {
        this.pools = pools;
        this.clock = clock;
        reader = Jdbi.create(pools.reader());
        writer = Jdbi.create(pools.writer());
    }

    String where() {
        return pools.where();
    }

    <T> T read(Function<Handle, T> work) {
        return guarded(() -> reader.inTransaction(work::apply));
    }

    /** Does one act. When this returns, the act is on the disk, or the work turned back and nothing changed. */
    <T> T write(Act act, Function<Writing, T> work) {
        PlainText.check("name of the person", act.who());
        PlainText.check("reason", act.why());
        return guarded(() -> writer.withHandle(handle -> {
            handle.begin();
            var writing = Writing.begin(handle, act, clock.instant());
            T outcome = work.apply(writing);
            if (writing.turnedBack()) {
                handle.rollback();
            } else {
                writing.seal();
                handle.commit();
            }
            return outcome;
        }));
    }

    private <T> T guarded(Work<T> work) {
        try {
            return work.run();
        } catch (UncheckedIOException e) {
            throw Failures.of(Kind.DAMAGED, where(), e, e.getCause());
        } catch (RuntimeException e) {
            throw Failures.find(e, where())
                    .map(failure -> (RuntimeException) failure)
                    .orElse(e);
        }
    }

    private interface Work<T> {
        T run();
    }
}
