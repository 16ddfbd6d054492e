package org.hosewright.server.door;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Ticker;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.Base64;
import java.util.Optional;
import org.hosewright.ledger.canonical.Digest;
import org.hosewright.ledger.person.Known;
import org.hosewright.ledger.person.People;

/** Who is signed in. Kept in memory only: when the program stops, everybody signs in again. */
final class Sessions {
    /** One shift at the station. */
    static final Duration LONGEST = Duration.ofHours(12);

    private static final int MOST = 10_000;
    private static final int TOKEN_BYTES = 32;

    private final SecureRandom random = new SecureRandom();
    private final Cache<String, Session> sessions;
    private final People people;

    Sessions(People people, Ticker ticker) {
        this.people = people;
        sessions = Caffeine.newBuilder()
                .expireAfterWrite(LONGEST)
                .maximumSize(MOST)
                .ticker(ticker)
                .build();
    }

    /** Begins one.
     *
     * @return its token, which only the browser keeps
     */
    String begin(Known known) {
        byte[] token = new byte[TOKEN_BYTES];
        random.nextBytes(token);
        String text = Base64.getUrlEncoder().withoutPadding().encodeToString(token);
        sessions.put(
                Digest.ofText(text),
                new Session(known.person().id(), known.secret().hash()));
        return text;
    }

    /** The person of a token, as that person stands now. A session ends with its password, and when the person may no
     * longer sign in.
     */
    Optional<Known> find(String token) {
        return Optional.ofNullable(sessions.getIfPresent(Digest.ofText(token)))
                .flatMap(session -> people.find(session.person())
                        .filter(known -> known.person().active())
                        .filter(known -> known.secret().hash().equals(session.secret())));
    }

    void end(String token) {
        sessions.invalidate(Digest.ofText(token));
    }

    /** One that was begun.
     *
     * @param person id
     * @param secret the hash that the password was held against
     */
    private record Session(String person, String secret) {
        @Override
        public String toString() {
            return "session of " + person;
        }
    }
}
