package org.hosewright.store;

import java.time.Clock;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

final class PostgresContractTest extends StoreContract {
    private static PostgresServer server;

    private String url = "";

    @BeforeAll
    static void start() {
        server = PostgresServer.start();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Override
    Store open(Clock clock) {
        if (url.isEmpty()) {
            url = server.freshDatabase();
        }
        return Store.open(url, clock);
    }
}
