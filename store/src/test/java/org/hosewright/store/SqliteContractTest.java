package org.hosewright.store;

import java.time.Clock;

final class SqliteContractTest extends StoreContract {
    @Override
    Store open(Clock clock) {
        return Store.open(folder.resolve("data"), clock);
    }
}
