package org.hosewright.hydraulics.quantity;

import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;

/** A place in the text of a quantity, read from left to right. */
final class QuantityCursor {
    private static final String COMMA = "a quantity with a comma is never read;"
            + " leave a thousands comma out (1500), and write decimals with a point (1.5)";

    private final String what;
    private final String text;
    private final String allowed;
    private final TextCursor at;
    private boolean fraction;

    /** Starts at the beginning.
     *
     * @param what the thing that is read, for the error
     * @param text what was written
     * @param allowed what would do, for the error
     */
    QuantityCursor(String what, String text, String allowed) {
        this.what = what;
        this.text = text;
        this.allowed = allowed;
        this.at = new TextCursor(text);
        if (text.indexOf(',') >= 0) {
            throw refused(COMMA);
        }
        at.skipSpaces();
    }

    InvalidInput refused(String would) {
        return new InvalidInput(what, text.trim(), would, "");
    }

    /** The number that stands here; a fraction is good for inches alone. */
    Decimal number() {
        boolean negative = sign();
        String whole = at.digits();
        fraction = !whole.isEmpty() && at.stands('/') && at.digitNext();
        if (fraction) {
            return signed(negative, part(whole));
        }
        if (at.stands('.')) {
            at.skip(1);
            String behind = at.digits();
            if (behind.isEmpty()) {
                throw refused(allowed);
            }
            return signed(negative, Decimal.of(checked(whole + behind), behind.length()));
        }
        if (whole.isEmpty()) {
            throw refused(allowed);
        }
        return signed(negative, wholeAndPart(whole));
    }

    /** The standard error behind a plus-minus sign, where one stands here. */
    Optional<Decimal> plusMinus() {
        if (!at.take("±") && !at.take("+-")) {
            return Optional.empty();
        }
        Decimal error = number();
        if (error.hi() < 0) {
            throw refused("a standard error of 0 or more behind the ±");
        }
        return Optional.of(error);
    }

    /** The unit that stands here, which must be of a kind. */
    Unit unit(Kind kind) {
        Unit best = null;
        for (Unit unit : Unit.values()) {
            boolean longer =
                    best == null || unit.symbol().length() > best.symbol().length();
            if (longer && at.standsWord(unit.symbol())) {
                best = unit;
            }
        }
        if (best == null) {
            throw unknownUnit(kind);
        }
        if (best.kind() != kind) {
            throw refused(kind.inWords() + "; " + best.symbol() + " is a unit of "
                    + best.kind().word());
        }
        if (fraction && best != Unit.IN) {
            throw refused("a decimal number (" + allowed + "); fractions are read in inches alone");
        }
        at.take(best.symbol());
        return best;
    }

    /** Passes over a sign that must stand here. */
    void expect(String sign) {
        if (!at.take(sign)) {
            throw refused(allowed);
        }
    }

    /** Makes sure that nothing more stands here. */
    void end() {
        if (!at.atEnd()) {
            throw refused(allowed);
        }
    }

    private boolean sign() {
        boolean negative = at.take("-") || at.take("\u2212");
        if (!negative && !at.stands("+-")) {
            at.take("+");
        }
        return negative;
    }

    private Decimal signed(boolean negative, Decimal number) {
        at.skipSpaces();
        return negative ? number.negated() : number;
    }

    private Decimal wholeAndPart(String whole) {
        int start = at.place();
        at.skipSpaces();
        String top = at.digits();
        fraction = !top.isEmpty() && at.stands('/') && at.digitNext();
        if (fraction) {
            double sum = Long.parseLong(checked(whole)) + part(top).hi();
            return new Decimal(sum, 0);
        }
        at.moveTo(start);
        return Decimal.of(checked(whole), 0);
    }

    private Decimal part(String top) {
        at.skip(1);
        long over = Long.parseLong(checked(at.digits()));
        long under = Long.parseLong(checked(top));
        boolean usual = over >= 2 && over <= 64 && (over & (over - 1)) == 0;
        if (!usual || under < 1 || under >= over) {
            throw refused("halves, quarters, eighths, down to 64ths of an inch, as in '1 3/4 in'");
        }
        return new Decimal((double) under / over, 0);
    }

    private String checked(String digits) {
        int most = fraction ? Decimal.EXACT_DIGITS : Decimal.MOST_DIGITS;
        if (digits.isEmpty() || digits.length() > most) {
            throw refused("a number of at most " + Decimal.MOST_DIGITS + " digits");
        }
        return digits;
    }

    private InvalidInput unknownUnit(Kind kind) {
        String rest = at.rest();
        for (Unit unit : Unit.values()) {
            if (unit.kind() == kind && unit.symbol().equalsIgnoreCase(rest)) {
                return refused("the unit spelled exactly: " + unit.symbol());
            }
        }
        boolean bare = rest.isEmpty() || "/@".indexOf(rest.charAt(0)) >= 0;
        return refused(bare ? "a number with its unit: " + kind.inWords() : kind.inWords());
    }
}
