package org.hosewright.store;

import java.time.Clock;

final class SqliteDrillTest extends DrillContract {
    @Override
    Store open(Clock clock) {
        return Store.open(folder.resolve("data"), clock);
    }
}
