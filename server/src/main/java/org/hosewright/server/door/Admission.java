package org.hosewright.server.door;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.hosewright.ledger.history.Hat;

/** What a door asks of the one who comes: nothing, an account, or one of some hats.
 *
 * @param kind how much is asked
 * @param hats one of which is needed, where hats are asked for
 */
public record Admission(Kind kind, Set<Hat> hats) {
    /** Needs no account: only the way in itself. */
    public static final Admission ANYBODY = new Admission(Kind.ANYBODY, Set.of());

    /** Needs an account, even one whose password was chosen by somebody else. */
    public static final Admission ARRIVING = new Admission(Kind.ARRIVING, Set.of());

    /** Needs an account; whatever hat. Nothing is changed behind such a door. */
    public static final Admission ACCOUNT = new Admission(Kind.ACCOUNT, Set.of());

    /** How much a door asks. */
    public enum Kind {
        ANYBODY,
        ARRIVING,
        ACCOUNT,
        HAT
    }

    public Admission {
        hats = Set.copyOf(hats);
        if ((kind == Kind.HAT) == hats.isEmpty()) {
            throw new IllegalArgumentException("hats belong to a door that asks for hats");
        }
    }

    /** Needs one of these hats. */
    public static Admission of(Hat first, Hat... others) {
        return new Admission(Kind.HAT, EnumSet.of(first, others));
    }

    /** The hats in words. */
    String words() {
        return Arrays.stream(Hat.values()).filter(hats::contains).map(Hat::word).collect(Collectors.joining(" or "));
    }
}
