package org.hosewright.ledger.drill;

import java.util.List;

/** The usual words that stand beside a night's numbers. */
final class Cautioned {
    /** Training and licensed practice rule; the numbers belong to what was flown. */
    static final List<String> NIGHT = List.of(
            "These numbers belong to the hose that was flown, laid as it was, straight and without kinks.",
            "Training and licensed practice, local codes and makers' ratings rule. Gauges and the nozzle crew's word"
                    + " overrule any sheet or screen.");

    private Cautioned() {}
}
