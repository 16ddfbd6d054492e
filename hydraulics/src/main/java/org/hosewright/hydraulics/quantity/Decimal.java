package org.hosewright.hydraulics.quantity;

/** A decimal number as it was written, kept in two parts so that twenty digits are not lost.
 *
 * @param hi the first fifteen digits, correctly rounded
 * @param lo what the remaining digits add
 */
record Decimal(double hi, double lo) {
    /** Digits that a double holds without rounding. */
    static final int EXACT_DIGITS = 15;

    /** More digits than this are not a number that anybody measured. */
    static final int MOST_DIGITS = 40;

    private static final int EXACT_POWER = 22;

    /** The number that digits and a count of decimals spell.
     *
     * @param digits 1 to {@link #MOST_DIGITS} of them, no sign, no point
     * @param decimals how many of them stand behind the point, 0 to the count of digits
     */
    static Decimal of(String digits, int decimals) {
        int lead = 0;
        while (lead < digits.length() - 1 && digits.charAt(lead) == '0') {
            lead++;
        }
        int split = Math.min(digits.length(), lead + EXACT_DIGITS);
        int behind = decimals - (digits.length() - split);
        Decimal head = exactly(Long.parseLong(digits.substring(lead, split)), behind);
        if (split == digits.length()) {
            return new Decimal(head.hi, 0);
        }
        int end = Math.min(digits.length(), split + EXACT_DIGITS);
        double tail = shift(Long.parseLong(digits.substring(split, end)), digits.length() - end - decimals);
        return new Decimal(head.hi, head.lo + tail);
    }

    /** A whole number of at most fifteen digits over a power of ten, with what the double of it leaves over. */
    static Decimal exactly(long whole, int decimals) {
        double hi = shift(whole, -decimals);
        if (decimals <= 0 || decimals > EXACT_POWER) {
            return new Decimal(hi, 0);
        }
        double back = hi * ten(decimals);
        return new Decimal(hi, (whole - back - new Decimal(hi, 0).lostIn(ten(decimals))) / ten(decimals));
    }

    /** A whole number times a power of ten; correctly rounded for powers within 22. */
    static double shift(long whole, int power) {
        double value = whole;
        int left = Math.abs(power);
        while (left > 0) {
            int step = Math.min(left, EXACT_POWER);
            value = power < 0 ? value / ten(step) : value * ten(step);
            left -= step;
        }
        return value;
    }

    Decimal negated() {
        return new Decimal(-hi, -lo);
    }

    double value() {
        return hi + lo;
    }

    /** This many of a unit, in SI. */
    double times(Unit unit) {
        return unit.kind() == Kind.TEMPERATURE ? unit.toSi(hi) + lo * unit.size() : times(unit.size());
    }

    /** This many of something without a zero point of its own, in SI; rounded once.
     *
     * <p>The small parts stand first: TeaVM 0.16 may write a + (b + c) as a + b + c, which rounds twice.
     */
    double times(double size) {
        return lostIn(size) + lo * size + hi * size;
    }

    /** What rounding takes from {@code hi} times a size. */
    double lostIn(double size) {
        double product = hi * size;
        double a = head(hi);
        double b = head(size);
        double restA = hi - a;
        double restB = size - b;
        return a * b - product + a * restB + restA * b + restA * restB;
    }

    /** The upper half of a number's digits. @source T. J. Dekker, Numerische Mathematik 18, 1971 (from memory) */
    private static double head(double x) {
        double wide = x * 134_217_729;
        return wide - (wide - x);
    }

    private static double ten(int power) {
        double value = 1;
        for (int i = 0; i < power; i++) {
            value *= 10;
        }
        return value;
    }
}
