package org.hosewright.evidence.plan;

import org.hosewright.hydraulics.error.InvalidInput;

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

    /** The question of a word.
     *
     * @throws InvalidInput there is none of that word
     */
    public static Question of(String word) {
        for (Question question : values()) {
            if (question.word.equals(word)) {
                return question;
            }
        }
        throw new InvalidInput("question of the night", word, "hose, piping, nozzle, meter or gauges", "");
    }

    /** The word in files and on the command line. */
    public String word() {
        return word;
    }
}
