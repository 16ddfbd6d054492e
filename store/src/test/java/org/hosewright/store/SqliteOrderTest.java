package org.hosewright.store;

import java.time.Clock;

final class SqliteOrderTest extends OrderContract {
    @Override
    Store open(Clock clock) {
        return Store.open(folder.resolve("data"), clock);
    }
}
