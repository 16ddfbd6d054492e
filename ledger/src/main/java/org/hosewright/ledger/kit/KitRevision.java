package org.hosewright.ledger.kit;

import java.time.Instant;
import org.hosewright.ledger.history.Mark;

/** The kit as it stood after one change.
 *
 * @param version from 1, one more with each change
 * @param text the whole kit in the open format, character for character as it was saved
 * @param mark who saved it, when and why
 */
public record KitRevision(long version, String text, Mark mark) {
    public Instant at() {
        return mark.at();
    }

    public String who() {
        return mark.who();
    }

    public String why() {
        return mark.why();
    }
}
