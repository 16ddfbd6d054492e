package org.hosewright.ground.stretch;

import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** One part of a stretch.
 *
 * @param kind what it is there for
 * @param length hose that it takes, with how well that is known
 * @param says what it is, in words; may be empty
 */
public record StretchPart(PartKind kind, Known<Length> length, String says) {
    public StretchPart {
        Numbers.requireNotNegative("length " + kind.says(), length.value().metres());
    }

    public static StretchPart of(PartKind kind, Length length) {
        return new StretchPart(kind, Known.of(length), "");
    }
}
