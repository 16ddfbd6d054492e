package org.hosewright.ledger.card;

import java.util.List;
import org.hosewright.ledger.kit.EngineRecord;

/** The card of one engine's panel: a line for each package it carries. */
public record EngineCard(EngineRecord engine, List<CardLine> lines) {
    public EngineCard {
        lines = List.copyOf(lines);
    }
}
