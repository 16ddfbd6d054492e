package org.hosewright.ground.stretch;

import org.hosewright.hydraulics.quantity.Length;

/** Rules for stairs as they are taught: whole sections for a count of floors. */
public enum TaughtStairs implements StairRule {
    /** One section for every flight of return stairs. @source Fire Rescue Magazine, 2018 */
    SECTION_A_FLIGHT("section-a-flight", 1, "a section for every floor climbed by return stairs"),
    /** One section for two floors, where there is no well. @source a forum of crews; the least that is taught */
    SECTION_FOR_TWO_FLOORS("section-for-two-floors", 2, "a section for every two floors"),
    /** The hose goes straight up the well between the flights. @source a forum of crews */
    WELL_HOLE("well-hole", 5, "a section for every five floors, up the well between the flights");

    private final String word;
    private final int floors;
    private final String says;

    TaughtStairs(String word, int floors, String says) {
        this.word = word;
        this.floors = floors;
        this.says = says;
    }

    /** Whole sections for a climb.
     *
     * @param climbed floors from where the stairs are entered to the fire floor; 0 or more
     */
    public int sections(int climbed) {
        return (StairRule.floors(climbed) + floors - 1) / floors;
    }

    @Override
    public Length hose(int climbed, Length section) {
        return new Length(sections(climbed) * section.metres());
    }

    @Override
    public String word() {
        return word;
    }

    @Override
    public String says() {
        return says;
    }
}
