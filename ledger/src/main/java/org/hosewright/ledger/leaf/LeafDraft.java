package org.hosewright.ledger.leaf;

import java.util.regex.Pattern;
import org.hosewright.hydraulics.error.InvalidInput;

/** A leaf about to be saved.
 *
 * @param kind what it holds
 * @param id up to 80 small letters, digits and hyphens; empty to have one made
 * @param basedOn the version it was made from; 0 for a new leaf
 * @param title what people call it, up to 200 characters; not blank
 * @param text its content, already checked by the caller
 */
public record LeafDraft(LeafKind kind, String id, long basedOn, String title, String text) {
    private static final Pattern ID = Pattern.compile("[a-z0-9-]{0,80}");
    private static final int LONGEST_TITLE = 200;

    public LeafDraft {
        if (!ID.matcher(id).matches()) {
            throw new InvalidInput("id of the " + kind.word(), id, "small letters, digits and hyphens, at most 80", "");
        }
        if (title.isBlank() || title.length() > LONGEST_TITLE) {
            throw new InvalidInput(
                    "name of the " + kind.word(), title, "a name of at most " + LONGEST_TITLE + " characters", "");
        }
        if (basedOn < 0 || (basedOn > 0 && id.isEmpty())) {
            throw new InvalidInput(
                    "version of the " + kind.word(), Long.toString(basedOn), "0 for a new " + kind.word(), "");
        }
    }

    /** A new leaf whose id the store makes. */
    public static LeafDraft ofNew(LeafKind kind, String title, String text) {
        return new LeafDraft(kind, "", 0, title, text);
    }
}
