package org.hosewright.hydraulics.quantity;

import java.util.Optional;

/** A quantity and how well it is known.
 *
 * @param value the best estimate
 * @param standardError one standard deviation, in the same kind; absent where nobody stated one
 */
public record Known<Q extends Quantity>(Q value, Optional<Q> standardError) {
    public Known {
        standardError.ifPresent(e -> Numbers.requireNotNegative("standard error", e.si()));
    }

    public static <Q extends Quantity> Known<Q> of(Q value) {
        return new Known<>(value, Optional.empty());
    }

    public static <Q extends Quantity> Known<Q> of(Q value, Q standardError) {
        return new Known<>(value, Optional.of(standardError));
    }

    /** The standard error in SI, 0 where none was stated. */
    public double standardErrorSi() {
        return standardError.isPresent() ? standardError.get().si() : 0;
    }
}
