package org.hosewright.evidence.trial;

import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Quantity;

/** What the kinds of a trial are compared by. */
public enum Measure {
    /** Pressure lost from the pump to the tip at one flow, over one length [Pa]: hoses. */
    LOSS("loss", "loses"),
    /** Flow at one tip pressure [m3/s]: nozzles. */
    FLOW("flow", "flows");

    private final String word;
    private final String does;

    Measure(String word, String does) {
        this.word = word;
        this.does = does;
    }

    /** The word in files. */
    public String word() {
        return word;
    }

    /** What a kind does: "loses". */
    public String does() {
        return does;
    }

    /** A number in SI as the quantity that it is. */
    public Quantity quantity(double si) {
        return this == LOSS ? new Pressure(si) : new Flow(si);
    }
}
