package org.hosewright.ledger.trial;

import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** A trial's labels opened to everybody. There is no way back.
 *
 * @param who opened them
 * @param at when
 * @param why in that person's words; may be empty
 * @param kinds kind by label
 */
public record Opened(String who, Instant at, String why, Map<String, String> kinds) {
    public Opened {
        kinds = Collections.unmodifiableMap(new LinkedHashMap<>(kinds));
    }
}
