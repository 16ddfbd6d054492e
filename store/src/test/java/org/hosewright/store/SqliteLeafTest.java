package org.hosewright.store;

import java.time.Clock;

final class SqliteLeafTest extends LeafContract {
    @Override
    Store open(Clock clock) {
        return Store.open(folder.resolve("data"), clock);
    }
}
