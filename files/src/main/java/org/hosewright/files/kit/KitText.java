package org.hosewright.files.kit;

import org.hosewright.ledger.kit.Kit;

/** A kit written out whole, in the open format and one fixed order. */
public final class KitText {
    private KitText() {}

    /** The text of a kit, in the kit's own units; reading it back gives an equal kit. */
    public static String write(Kit kit) {
        throw new UnsupportedOperationException();
    }
}
