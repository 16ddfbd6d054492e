package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.hosewright.files.exchange.KeyFile;
import org.hosewright.ledger.history.Audit;
import org.hosewright.ledger.history.Entry;
import org.hosewright.ledger.history.History;
import org.hosewright.ledger.history.Subject;
import org.hosewright.server.setup.Ports;
import org.hosewright.server.setup.ServerConfig;
import org.hosewright.store.Store;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A failure inside the program: the one who asked is told that it failed, and nothing of the inside. */
final class FailureInsideTest {
    private static final String INSIDE = "select hash from history at 10.1.2.3, password hunter2";

    @TempDir
    Path folder;

    /** A history that fails as a database does, with words that are nobody's business. */
    private static final class Broken implements History {
        @Override
        public List<Entry> listLatest(int most) {
            throw new IllegalStateException(INSIDE);
        }

        @Override
        public List<Entry> listAbout(Subject subject, String subjectId, int most) {
            throw new IllegalStateException(INSIDE);
        }

        @Override
        public Audit audit() {
            throw new IllegalStateException(INSIDE);
        }
    }

    @Test
    void failureInsideTellsNothingOfTheInsideHolds() {
        try (Store store = Store.open(folder, Running.CLOCK)) {
            Ports whole = Running.ports(store, folder);
            Ports broken = new Ports(
                    whole.kits(),
                    whole.drills(),
                    whole.orders(),
                    whole.leaves(),
                    whole.people(),
                    new Broken(),
                    new KeyFile(folder));
            Demo.fill(broken, "the test's folder");
            try (var server = HosewrightServer.start(new ServerConfig(0, Running.CLOCK, true), broken)) {
                HttpResponse<String> answer = Running.get(server.address().resolve("/api/v1/history"));
                assertThat(answer.statusCode()).isEqualTo(500);
                assertThat(answer.headers().firstValue("Content-Type").orElse(""))
                        .startsWith("application/problem+json");
                assertThat(answer.body())
                        .contains("Something went wrong inside the program; nothing was changed.")
                        .doesNotContain(
                                "select", "hash", "10.1.2.3", "hunter2", "Exception", "org.hosewright", ".java");
                assertThat(Running.get(server.address().resolve("/api/v1/company"))
                                .statusCode())
                        .isEqualTo(200);
            }
        }
    }
}
