package org.hosewright.ledger.history;

/** What a person acts as. One person may wear all of them; the record shows which one was worn. */
public enum Hat {
    /** Writes down readings. */
    RECORDER("recorder"),
    /** Works out numbers, keeps the kit, proposes orders. */
    ANALYST("analyst"),
    /** Signs orders and withdraws them. */
    APPROVER("approver"),
    /** Says that what hangs on the rig is what was signed. */
    APPARATUS_OFFICER("apparatus officer"),
    /** Pumps by the numbers. */
    OPERATOR("operator");

    private final String word;

    Hat(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }
}
