package org.hosewright.evidence.plan;

/** What a test night may be asked. */
public enum Question {
    HOSE("hose"),
    PIPING("piping"),
    NOZZLE("nozzle"),
    METER("meter"),
    GAUGES("gauges");

    private final String word;

    Question(String word) {
        this.word = word;
    }

    /** The word in files and on the command line. */
    public String word() {
        return word;
    }
}
