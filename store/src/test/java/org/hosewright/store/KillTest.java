package org.hosewright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A store whose process is killed again and again while it writes, each time at another moment. */
final class KillTest {
    /** One kill in so many falls while the store may still be opening, one in its very first acts. */
    private static final int PHASES = 5;

    private static final int OPENING_MS = 900;
    private static final int FIRST_ACTS_MS = 300;

    /** The others fall within this time after a number of writes, so that they hit an act anywhere within it. */
    private static final int SPREAD_MS = 30;

    private static final int MOST_WRITES = 80;

    /** What was never said to anybody is looked at after so many kills, and at the end: what is half-made stays so. */
    private static final int WHOLE_EVERY = 10;

    @TempDir
    Path folder;

    private long awaited;
    private long lastEntry;

    @Test
    void twentyKillsLoseNothingHolds() throws Exception {
        killAndCheck(20, 20260512);
    }

    @Test
    @Tag("long")
    void twoHundredKillsLoseNothingHolds() throws Exception {
        killAndCheck(200, 41);
    }

    private void killAndCheck(int kills, long seed) throws Exception {
        var random = new Random(seed);
        Path data = folder.resolve("data");
        var everSaid = new ArrayList<String>();
        for (int kill = 0; kill < kills; kill++) {
            List<String> said = writeUntilKilled(data, kill, random);
            check(data, said, "seed " + seed + ", kill " + kill, kill % WHOLE_EVERY == 0);
            everSaid.addAll(said);
        }
        check(data, everSaid, "seed " + seed + ", all kills together", true);
        Map<String, Long> acknowledged = everSaid.stream()
                .map(line -> line.split(" ", 2)[0])
                .filter(word -> !word.equals("open"))
                .collect(Collectors.groupingBy(word -> word, TreeMap::new, Collectors.counting()));
        System.out.println(kills + " kills (seed " + seed + "): acknowledged writes " + acknowledged + " in "
                + lastEntry + " acts, none missing");
        assertThat(acknowledged.values().stream().mapToLong(Long::longValue).sum())
                .isGreaterThanOrEqualTo(awaited);
        assertThat(acknowledged.get("order")).isGreaterThanOrEqualTo(kills);
        assertThat(acknowledged.get("leaf")).isGreaterThanOrEqualTo(kills);
    }

    private List<String> writeUntilKilled(Path data, int kill, Random random) throws Exception {
        try (Child writer =
                Child.start(List.of(), BusyWriter.class, folder, data.toString(), Long.toString(random.nextLong()))) {
            if (kill % PHASES == 0) {
                TimeUnit.MILLISECONDS.sleep(random.nextInt(OPENING_MS));
            } else if (kill % PHASES == 1) {
                writer.awaitLine("open");
                TimeUnit.MILLISECONDS.sleep(random.nextInt(FIRST_ACTS_MS));
            } else {
                int writes = 1 + random.nextInt(MOST_WRITES);
                awaited += writes;
                writer.awaitLines("", 1 + writes);
                TimeUnit.MILLISECONDS.sleep(random.nextInt(SPREAD_MS));
            }
            writer.kill();
            assertThat(writer.words()).doesNotContain("Exception");
            return writer.said();
        }
    }

    /** Every acknowledged write is there as it was said, and nothing is half-made. */
    private void check(Path data, List<String> said, String round, boolean whole) {
        try (Store store = Store.open(data)) {
            assertThat(store.check()).as(round).isEmpty();
            long before = lastEntry;
            lastEntry = store.history().listLatest(1).stream()
                    .mapToLong(entry -> entry.mark().entry())
                    .findFirst()
                    .orElse(0);
            long saidLast = said.stream().mapToLong(SaidAndKept::entry).max().orElse(0);
            assertThat(lastEntry).as(round).isGreaterThanOrEqualTo(Math.max(before, saidLast));
            var kept = new SaidAndKept(store, round);
            said.forEach(kept::check);
            if (whole) {
                kept.everyOrderIsWhole();
                kept.everyLeafIsWhole();
            }
        }
    }
}
