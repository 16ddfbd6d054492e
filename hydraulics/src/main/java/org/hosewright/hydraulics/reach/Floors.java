package org.hosewright.hydraulics.reach;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** How floors are counted and how high they are: a floor is never a height without both.
 *
 * @param counting which floor is at the street
 * @param lowest height from the street to the next floor; above 0
 * @param storey height from each further floor to the next; above 0
 */
public record Floors(Counting counting, Length lowest, Length storey) {
    /** Which floor is at the street. */
    public enum Counting {
        /** The street floor is floor 1, as in the United States. */
        FROM_ONE(1, "floor 1 is at the street"),
        /** The street floor is the ground floor, floor 0, as in Europe. */
        FROM_GROUND(0, "floor 1 is one up from the street");

        private final int street;
        private final String says;

        Counting(int street, String says) {
            this.street = street;
            this.says = says;
        }

        public int street() {
            return street;
        }

        public String says() {
            return says;
        }
    }

    public Floors {
        Numbers.requirePositive("height of the lowest storey", lowest.metres());
        Numbers.requirePositive("height of a storey", storey.metres());
    }

    /** Floors of one height. */
    public static Floors of(Counting counting, Length storey) {
        return new Floors(counting, storey, storey);
    }

    /** The floor above the street.
     *
     * @throws InvalidInput a floor below the street, whose depth storeys do not tell
     */
    public Length rise(int floor) {
        int up = floor - counting.street();
        if (up < 0) {
            throw new InvalidInput(
                    "floor", String.valueOf(floor), "a floor at or above the street; a fall as a height", "");
        }
        return new Length(up == 0 ? 0 : lowest.metres() + (up - 1) * storey.metres());
    }

    /** A floor with its height and how floors are counted: "floor 3, 20 ft up (floor 1 is at the street)".
     *
     * @throws InvalidInput a floor below the street
     */
    public String says(int floor, UnitSystem units) {
        return "floor " + floor + ", " + QuantityShown.of(units).rise(rise(floor)) + " (" + counting.says() + ")";
    }
}
