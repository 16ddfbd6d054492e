package org.hosewright.hydraulics.profile;

/** What a mark is there for; it decides the pen, never the meaning alone. */
public enum Role {
    /** The pressure along the line, or the needed pressure against length. */
    PRESSURE("pressure"),
    /** The needed pressure of a further curve. */
    CURVE("curve"),
    /** The 95 % band about a pressure. */
    BAND("band"),
    /** The drop in the piping, at the pump. */
    PIPING("piping"),
    /** The ground, filled. */
    GROUND("ground"),
    /** A coupling. */
    COUPLING("coupling"),
    /** The name of a run of hose. */
    HOSE("hose"),
    /** Beyond a limit, hatched; its edge; its name. */
    LIMIT("limit"),
    /** A reading in use: dot, error bar, name. */
    PIN("pin"),
    /** A reading set aside. */
    PIN_ASIDE("pin-aside"),
    /** A thin line from a name to what it names. */
    LEADER("leader"),
    /** A line across at a round number. */
    GRID("grid"),
    /** A round number on an axis. */
    AXIS("axis"),
    /** The end of the line. */
    TIP("tip"),
    /** The dotted line from the tip to the ground below it. */
    LEAD("lead"),
    /** The number that is the answer, large. */
    ANSWER("answer"),
    /** What stands with the answer, small. */
    BESIDE("beside"),
    /** The longest stretch at the best estimate. */
    LONGEST("longest"),
    /** The longest stretch that holds with 95 % confidence. */
    SAFE("safe");

    private final String word;

    Role(String word) {
        this.word = word;
    }

    /** The word in results. */
    public String word() {
        return word;
    }
}
