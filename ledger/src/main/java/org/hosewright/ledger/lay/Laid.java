package org.hosewright.ledger.lay;

/** What a lay file describes: one line, or lines that branch or stand beside each other. */
public sealed interface Laid permits SingleLay, BranchedLay {}
