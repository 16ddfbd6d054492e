package org.hosewright.hydraulics.quantity;

import java.util.Optional;

/** Inches as the trade writes them: 7/8, 1 3/4, 2 1/2. */
final class Inches {
    private static final int FINEST = 64;

    private Inches() {}

    /** The whole number and the fraction, down to 64ths; absent where none is near enough.
     *
     * @param inches 0 or more
     * @param off how far off it may be [in]
     */
    static Optional<String> find(double inches, double off) {
        double parts = Numbers.toNearest(inches * FINEST, 1);
        if (inches < 0 || Math.abs(parts / FINEST - inches) > off) {
            return Optional.empty();
        }
        long whole = (long) parts / FINEST;
        long top = (long) parts % FINEST;
        if (top == 0) {
            return Optional.of(String.valueOf(whole));
        }
        long under = FINEST;
        while (top % 2 == 0) {
            top /= 2;
            under /= 2;
        }
        return Optional.of((whole == 0 ? "" : whole + " ") + top + "/" + under);
    }
}
