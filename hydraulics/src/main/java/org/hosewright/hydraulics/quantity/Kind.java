package org.hosewright.hydraulics.quantity;

import java.util.List;

/** The kinds of plain quantity that people write down with a single unit. */
public enum Kind {
    PRESSURE("pressure"),
    FLOW("flow"),
    LENGTH("length"),
    FORCE("force"),
    VOLUME("volume"),
    TIME("time"),
    TEMPERATURE("temperature"),
    RATIO("share");

    private final String word;

    Kind(String word) {
        this.word = word;
    }

    /** What would do, in words: "a pressure in psi, bar or kPa". */
    public String inWords() {
        List<Unit> units = Unit.listOf(this);
        StringBuilder words = new StringBuilder("a " + word + " in ");
        for (int i = 0; i < units.size(); i++) {
            words.append(i == 0 ? "" : i == units.size() - 1 ? " or " : ", ")
                    .append(units.get(i).symbol());
        }
        return words.toString();
    }

    /** A quantity of this kind from its value in SI. */
    public Quantity ofSi(double si) {
        return switch (this) {
            case PRESSURE -> new Pressure(si);
            case FLOW -> new Flow(si);
            case LENGTH -> new Length(si);
            case FORCE -> new Force(si);
            case VOLUME -> new Volume(si);
            case TIME -> new Seconds(si);
            case TEMPERATURE -> new Temperature(si);
            case RATIO -> new Ratio(si);
        };
    }

    /** The word for it in a sentence. */
    public String word() {
        return word;
    }
}
