package org.hosewright.store;

import java.time.Clock;

final class SqliteRecordTest extends RecordContract {
    @Override
    Store open(Clock clock) {
        return Store.open(folder.resolve("data"), clock);
    }
}
