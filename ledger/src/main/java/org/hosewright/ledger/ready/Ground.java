package org.hosewright.ledger.ready;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalLong;

/** One number that an engine's pressures rest on, and the night that verified it.
 *
 * @param what the number, in words
 * @param night id of the night that determined it; empty where none did
 * @param on the day of that night, where known
 * @param instead what it rests on where no night determined it, in words; empty otherwise
 */
public record Ground(String what, String night, Optional<LocalDate> on, String instead) {
    static Ground ofNight(String what, String night, Optional<LocalDate> on) {
        return new Ground(what, night, on, "");
    }

    static Ground unverified(String what, String instead) {
        return new Ground(what, "", Optional.empty(), instead);
    }

    /** True where a night determined it. */
    public boolean isVerified() {
        return !night.isEmpty();
    }

    /** How old the evidence is [days]; empty where its day is not known. */
    public OptionalLong age_days(LocalDate today) {
        return on.isEmpty() ? OptionalLong.empty() : OptionalLong.of(ChronoUnit.DAYS.between(on.get(), today));
    }
}
