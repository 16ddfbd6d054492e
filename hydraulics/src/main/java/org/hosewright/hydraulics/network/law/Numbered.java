package org.hosewright.hydraulics.network.law;

import org.hosewright.hydraulics.error.InvalidInput;

/** The check that every law makes of the place of a coefficient. */
final class Numbered {
    private Numbered() {}

    static int require(Law law, int at) {
        int count = law.listCoefficients().size();
        if (at < 0 || at >= count) {
            throw new InvalidInput("coefficient of a law", String.valueOf(at), "0 to " + (count - 1), "");
        }
        return at;
    }
}
