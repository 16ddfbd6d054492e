package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Queue;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.DrillRecord;
import org.hosewright.ledger.history.Act;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many people at one station's server at once, looking and typing: nobody is turned away, and no reading is lost. */
final class CrowdTest {
    private static final int PEOPLE = 50;
    private static final Duration LONG = Duration.ofMinutes(10);
    private static final Duration SHORT = Duration.ofSeconds(4);
    private static final long SEED = 20260512;

    @TempDir
    Path folder;

    /** Milliseconds of each answer. */
    private final Queue<Double> waits = new ConcurrentLinkedQueue<>();

    private final Queue<String> failures = new ConcurrentLinkedQueue<>();

    @Test
    void crowdForSecondsHolds() throws Exception {
        crowd(new County(4, 40), 20, SHORT);
    }

    @Test
    @Tag("long")
    void crowdForTenMinutesHolds() throws Exception {
        crowd(new County(50, 2000), 200, LONG);
    }

    private void crowd(County county, int nights, Duration span) throws Exception {
        try (Running running = Running.empty(folder)) {
            county.fill(running.ports(), nights);
            var pool = Executors.newFixedThreadPool(PEOPLE);
            long end = System.nanoTime() + span.toNanos();
            List<Future<Integer>> typed = new ArrayList<>();
            List<DrillRecord> tables = new ArrayList<>();
            for (int person = 0; person < PEOPLE; person++) {
                DrillRecord table = table(running, person);
                tables.add(table);
                var random = new Random(SEED + person);
                typed.add(pool.submit(() -> new Person(running, table.id(), random).stayUntil(end)));
            }
            int kept = 0;
            for (int person = 0; person < PEOPLE; person++) {
                int acknowledged = typed.get(person).get();
                kept += acknowledged;
                String id = tables.get(person).id();
                assertThat(running.ports().drills().findDrill(id).orElseThrow().rows())
                        .as("readings of person " + person)
                        .hasSize(acknowledged);
            }
            pool.shutdown();
            tell(span, kept);
            assertThat(failures).isEmpty();
            assertThat(kept).isPositive();
            assertThat(running.ports().history().audit().broken()).isEmpty();
        }
    }

    private static DrillRecord table(Running running, int person) {
        DrillRecord first = running.ports()
                .drills()
                .findDrill(running.ports().drills().listDrills().get(0).id())
                .orElseThrow();
        var head = new DrillHead("night of person " + person, first.date(), first.columns());
        return running.ports().drills().create(head, List.of(), new Act("person " + person, ""));
    }

    private void tell(Duration span, int kept) {
        List<Double> sorted = new ArrayList<>(waits);
        Collections.sort(sorted);
        System.out.println(String.format(
                Locale.ROOT,
                "%d people for %d s (seed %d): %d answers, %d readings kept, %d failures; median %.1f ms, 99th percentile %.1f ms",
                PEOPLE,
                span.toSeconds(),
                SEED,
                sorted.size(),
                kept,
                failures.size(),
                sorted.get(sorted.size() / 2),
                sorted.get(sorted.size() * 99 / 100)));
    }

    /** One person, who looks at pages, types a reading now and then, and thinks in between. */
    private final class Person {
        private static final int MOST_READINGS = 30;

        private final Running running;
        private final String drill;
        private final Random random;
        private int typed;

        Person(Running running, String drill, Random random) {
            this.running = running;
            this.drill = drill;
            this.random = random;
        }

        /** Readings acknowledged. */
        int stayUntil(long end) throws InterruptedException {
            while (System.nanoTime() < end) {
                long start = System.nanoTime();
                HttpResponse<String> answer = act();
                waits.add((System.nanoTime() - start) / 1e6);
                if (answer.statusCode() >= 300) {
                    failures.add(answer.uri() + " " + answer.statusCode() + " " + answer.body());
                }
                Thread.sleep(300 + random.nextInt(1400));
            }
            return typed;
        }

        private HttpResponse<String> act() {
            return switch (random.nextInt(10)) {
                case 0, 1 -> running.get("/api/v1/station");
                case 2 -> running.get("/api/v1/reach?engine=engine-" + (1 + random.nextInt(4)));
                case 3 -> running.get("/api/v1/papers?engine=engine-" + (1 + random.nextInt(4)));
                case 4 -> running.get("/api/v1/drills");
                case 5 -> running.get("/api/v1/orders");
                case 6 -> running.get("/");
                case 7 -> typed == 0 ? type() : running.get("/api/v1/drills/" + drill + "/report");
                default -> typed < MOST_READINGS ? type() : running.get("/api/v1/drills/" + drill);
            };
        }

        private HttpResponse<String> type() {
            int tip_psi = 35 + random.nextInt(20);
            int length_ft = 150 + 100 * random.nextInt(4);
            double pump_psi = tip_psi + (15.5 * length_ft / 100 + 2.5) * 22.74 * 22.74 * tip_psi / 1e4;
            String cells = String.format(
                    Locale.ROOT,
                    "{\"reading\": \"%d\", \"engine\": \"engine-1\", \"discharge\": \"out-1\", \"hose\": \"attack-1-1\","
                            + " \"length [ft]\": \"%d\", \"rise [ft]\": \"0\", \"nozzle\": \"seven-eighths\","
                            + " \"pump [psi]\": \"%.0f\", \"tip [psi]\": \"%d\", \"flow [gpm]\": \"\","
                            + " \"pump gauge\": \"gauge-a\", \"tip gauge\": \"gauge-b\", \"meter\": \"\"}",
                    typed + 1,
                    length_ft,
                    pump_psi,
                    tip_psi);
            String change = "{\"who\": \"Recorder\", \"why\": \"\", \"changes\": [{\"do\": \"add-row\", \"cells\": "
                    + cells + "}]}";
            HttpResponse<String> answer = running.post("/api/v1/drills/" + drill + "/changes", change);
            if (answer.statusCode() == 200) {
                typed++;
            }
            return answer;
        }
    }
}
