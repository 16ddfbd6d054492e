package org.hosewright.store;

import java.time.Clock;

final class PostgresPeopleTest extends PeopleContract {
    private String url = "";

    @Override
    Store open(Clock clock) {
        if (url.isEmpty()) {
            url = PostgresServer.get().freshDatabase();
        }
        return Store.open(url, clock);
    }
}
