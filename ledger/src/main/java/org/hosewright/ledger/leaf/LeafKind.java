package org.hosewright.ledger.leaf;

import org.hosewright.ledger.history.Hat;

/** What a leaf of the record holds, and what a person acts as who writes it. */
public enum LeafKind {
    /** A way walked with a receiver, its fixes as given. */
    WALK("walk", Hat.RECORDER),
    /** A stretch to an address, estimated or laid. */
    STRETCH("stretch", Hat.ANALYST),
    /** The plan of a test night. */
    PLAN("plan", Hat.ANALYST),
    /** A blind trial, its labels and re-lays. */
    TRIAL("trial", Hat.RECORDER),
    /** Which label of a trial stands for which kind: for those who hold it, until it is opened. */
    TRIAL_KEY("trial-key", Hat.RECORDER),
    /** Practice problems for drivers, asked of an order. */
    PRACTICE("practice", Hat.ANALYST),
    /** What lies on one rig. */
    BED("bed", Hat.OPERATOR),
    /** A photograph, as base64. */
    PICTURE("picture", Hat.RECORDER),
    /** A layer of the company's own map, as GeoJSON. */
    LAYER("layer", Hat.ANALYST),
    /** What a neighbouring company handed over. */
    NEIGHBOUR("neighbour", Hat.ANALYST),
    /** What the company handed to its neighbours. */
    HANDOVER("handover", Hat.APPROVER),
    /** A rule the company set for its own record. */
    SETTING("setting", Hat.OWNER);

    private final String word;
    private final Hat hat;

    LeafKind(String word, Hat hat) {
        this.word = word;
        this.hat = hat;
    }

    public String word() {
        return word;
    }

    public Hat hat() {
        return hat;
    }
}
