package org.hosewright.ledger.card;

import java.util.List;
import org.hosewright.ledger.kit.EngineRecord;

/** The card of one engine's panel: a line for each package it carries. */
public record EngineCard(EngineRecord engine, List<CardLine> lines) {
    public EngineCard {
        lines = List.copyOf(lines);
    }

    /** The card of a rig that is out of service, which says on each line which rig serves instead. */
    EngineCard replacedBy(String reserve) {
        String id = engine.engine().id();
        String says = "While " + reserve + " serves in the place of " + id + ", go by the card of " + reserve
                + " on it, never by this one.";
        return new EngineCard(
                engine, lines.stream().map(line -> line.cautioned(says)).toList());
    }
}
