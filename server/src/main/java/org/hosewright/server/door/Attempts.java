package org.hosewright.server.door;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Ticker;
import java.time.Duration;
import java.util.concurrent.atomic.AtomicInteger;
import org.hosewright.server.guard.Refusal;

/** Counts what may be done only so often within a span of time, by a key such as a name or an address. */
final class Attempts {
    private static final int MOST_KEYS = 20_000;
    private static final int TOO_MANY = 429;

    private final Cache<String, AtomicInteger> counts;
    private final int most;
    private final Duration span;

    /** A counter.
     *
     * @param most times within the span that begins with the first time
     */
    Attempts(int most, Duration span, Ticker ticker) {
        this.most = most;
        this.span = span;
        counts = Caffeine.newBuilder()
                .expireAfterWrite(span)
                .maximumSize(MOST_KEYS)
                .ticker(ticker)
                .build();
    }

    /** Counts one more.
     *
     * @throws Refusal it was too often
     */
    void count(String key) {
        if (counts.get(key, unused -> new AtomicInteger()).incrementAndGet() > most) {
            throw refused();
        }
    }

    private Refusal refused() {
        long minutes = span.toMinutes();
        return new Refusal(
                TOO_MANY,
                "Too often",
                "That was tried too often; wait " + (minutes == 1 ? "a minute" : minutes + " minutes")
                        + " and try again.");
    }

    /** Counts one less: it was right in the end. */
    void takeBack(String key) {
        AtomicInteger count = counts.getIfPresent(key);
        if (count != null) {
            count.decrementAndGet();
        }
    }

    /** Counts from nothing again. */
    void forget(String key) {
        counts.invalidate(key);
    }
}
