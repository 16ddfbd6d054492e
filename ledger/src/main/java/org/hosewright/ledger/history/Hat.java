package org.hosewright.ledger.history;

import java.util.Arrays;
import org.hosewright.hydraulics.error.InvalidInput;

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
    OPERATOR("operator"),
    /** Says who may work with the record, and what the company lays down about its doors. */
    OWNER("owner");

    private final String word;

    Hat(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** The hat of a word.
     *
     * @throws InvalidInput there is none
     */
    public static Hat of(String word) {
        return Arrays.stream(values())
                .filter(hat -> hat.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new InvalidInput(
                        "hat",
                        word,
                        String.join(", ", Arrays.stream(values()).map(Hat::word).toList()),
                        ""));
    }
}
