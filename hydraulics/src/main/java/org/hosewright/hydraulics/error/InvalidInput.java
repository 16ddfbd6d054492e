package org.hosewright.hydraulics.error;

/** An input that cannot be used, said so that the person who gave it can mend it.
 *
 * <p>The message reads: what, the value as given, where it stands, and what would do.
 */
public final class InvalidInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String what;
    private final String value;
    private final String allowed;
    private final String where;

    /** Makes the error.
     *
     * @param what the thing that is wrong, in the words of the trade ("pump pressure")
     * @param value the value as it was given; empty when none was given
     * @param allowed what would do, units included ("a pressure from 0 to 600 psi")
     * @param where file, row and key, as far as known; empty when the caller adds it
     */
    public InvalidInput(String what, String value, String allowed, String where) {
        super(sentence(what, value, allowed, where));
        this.what = what;
        this.value = value;
        this.allowed = allowed;
        this.where = where;
    }

    /** The same error, standing at a place that the thrower did not know.
     *
     * @param place outer place, put before the place known so far ("readings.csv, row 3")
     */
    public InvalidInput at(String place) {
        return new InvalidInput(what, value, allowed, where.isEmpty() ? place : place + ", " + where);
    }

    public String what() {
        return what;
    }

    public String value() {
        return value;
    }

    public String allowed() {
        return allowed;
    }

    public String where() {
        return where;
    }

    private static String sentence(String what, String value, String allowed, String where) {
        String place = where.isEmpty() ? "" : where + ": ";
        String given = value.isEmpty() ? what + " is missing" : what + " cannot be '" + value + "'";
        return place + given + "; what would do: " + allowed + ".";
    }
}
