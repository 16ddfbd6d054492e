package org.hosewright.store;

import java.time.Clock;

final class SqlitePeopleTest extends PeopleContract {
    @Override
    Store open(Clock clock) {
        return Store.open(folder.resolve("data"), clock);
    }
}
