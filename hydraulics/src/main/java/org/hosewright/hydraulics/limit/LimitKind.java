package org.hosewright.hydraulics.limit;

/** The kinds of limit. */
public enum LimitKind {
    SUPPLY("supply"),
    CEILING("ceiling"),
    PUMP("pump"),
    HOSE("hose"),
    APPLIANCE("appliance"),
    NOZZLE("nozzle"),
    REACTION("reaction"),
    INTAKE("intake"),
    BACK_PRESSURE("back-pressure");

    private final String word;

    LimitKind(String word) {
        this.word = word;
    }

    /** The word in results. */
    public String word() {
        return word;
    }
}
