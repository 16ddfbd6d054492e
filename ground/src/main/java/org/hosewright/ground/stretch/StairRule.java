package org.hosewright.ground.stretch;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;

/** How much hose stairs take: a company's own choice, for rules differ by place and by stair. None is a default. */
public sealed interface StairRule permits TaughtStairs, StairRule.OwnLength {
    /** Hose for a climb.
     *
     * @param climbed floors from where the stairs are entered to the fire floor; 0 or more
     * @param section from coupling to coupling
     */
    Length hose(int climbed, Length section);

    /** The word in files. */
    String word();

    /** The rule in words. */
    String says();

    /** A count of floors.
     *
     * @throws InvalidInput below 0
     */
    static int floors(int climbed) {
        if (climbed < 0) {
            throw new InvalidInput("floors climbed", String.valueOf(climbed), "0 or more", "");
        }
        return climbed;
    }

    /** A length that the company found for every floor: straight and scissor stairs take part of a section.
     *
     * @param each hose for a floor; above 0
     */
    record OwnLength(Length each) implements StairRule {
        /** The word in files. */
        public static final String WORD = "own-length";

        public OwnLength {
            Numbers.requirePositive("hose for a floor", each.metres());
        }

        @Override
        public Length hose(int climbed, Length section) {
            return new Length(floors(climbed) * each.metres());
        }

        @Override
        public String word() {
            return WORD;
        }

        @Override
        public String says() {
            return "the company's own length for every floor";
        }
    }
}
