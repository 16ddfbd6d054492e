package org.hosewright.ledger.exchange;

import java.time.LocalDate;

/** Whether what a neighbour handed over is still to be used, as known here. */
public enum Standing {
    /** Nothing known here speaks against it. */
    HELD("held"),
    /** Its last day is over. */
    RUN_OUT("run out"),
    /** The neighbour took it back. */
    WITHDRAWN("withdrawn");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** How a handover stands on a day. */
    public static Standing of(Handover handover, LocalDate today) {
        if (handover.isWithdrawal()) {
            return WITHDRAWN;
        }
        return handover.ranOut(today) ? RUN_OUT : HELD;
    }

    /** It in a sentence; empty where it is held. */
    public String says(Handover handover) {
        return switch (this) {
            case HELD -> "";
            case RUN_OUT ->
                "RAN OUT on " + handover.until() + ": do not use these figures; ask " + handover.company()
                        + " for newer ones.";
            case WITHDRAWN ->
                "WITHDRAWN by " + handover.company() + " on "
                        + handover.issued().toString().substring(0, 10) + ": " + handover.withdrawn()
                        + " Do not use any figure of theirs.";
        };
    }
}
