package org.hosewright.files.walk;

import java.util.Arrays;
import java.util.Optional;
import org.hosewright.ground.walk.EnteredRise;
import org.hosewright.ground.walk.EnteredRise.Direction;
import org.hosewright.ground.walk.MeasuredLength;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.QuantityText;

/** Lengths with how well they are known, as in "340 ± 2 ft"; rises as up or down, never a bare sign. */
public final class KnownLength {
    private KnownLength() {}

    /** A length with its standard error, where one stands.
     *
     * @throws InvalidInput no length with its unit
     */
    public static Known<Length> of(String text) {
        Known<Quantity> known = QuantityText.known(Kind.LENGTH, text);
        Length value = new Length(known.value().si());
        return known.standardError()
                .map(error -> Known.of(value, new Length(error.si())))
                .orElseGet(() -> Known.of(value));
    }

    /** A rise from its two fields.
     *
     * @throws InvalidInput both are filled in, or one is no length
     */
    public static Optional<EnteredRise> rise(Optional<String> up, Optional<String> down) {
        if (up.isPresent() && down.isPresent()) {
            throw new InvalidInput("rise", "up and down", "one of the two", "");
        }
        return up.map(text -> rise(Direction.UP, text)).or(() -> down.map(text -> rise(Direction.DOWN, text)));
    }

    /** What a length was measured with, by its word. */
    public static MeasuredLength.By by(String word) {
        return Arrays.stream(MeasuredLength.By.values())
                .filter(by -> by.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new InvalidInput("measured with", word, "hose laid, tape or measuring wheel", ""));
    }

    /** True for couplings of hose laid: the only ones that tell a length. */
    public static boolean ofHoseLaid(String word) {
        if (by(word) != MeasuredLength.By.HOSE_LAID) {
            throw new InvalidInput("couplings", word, MeasuredLength.By.HOSE_LAID.word(), "");
        }
        return true;
    }

    private static EnteredRise rise(Direction direction, String text) {
        Known<Length> known = of(text);
        return new EnteredRise(direction, known.value(), known.standardError().orElse(new Length(0)));
    }
}
