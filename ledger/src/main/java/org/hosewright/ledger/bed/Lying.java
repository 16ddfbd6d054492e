package org.hosewright.ledger.bed;

import java.util.List;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;

/** What lies in one package's place on the rig.
 *
 * @param hosePackage id of the package
 * @param hose chain as it lies, in laying order; empty where the bed is empty
 * @param marks the company's marks of the single lengths that lie there, such as their numbers; may be empty
 * @param nozzle id of the nozzle that is on it
 * @param setting its setting or ring, as it stands; empty for the only one
 * @param note what was swapped, when and after what; may be empty
 */
public record Lying(
        String hosePackage, List<Stretch> hose, List<String> marks, String nozzle, String setting, String note) {
    /** Longer texts are no notes, longer lists no bed. */
    private static final int MOST_LETTERS = 400;

    private static final int MOST_MARKS = 100;

    public Lying {
        hose = List.copyOf(hose);
        marks = List.copyOf(marks);
        if (note.length() > MOST_LETTERS) {
            throw new InvalidInput("note", note.substring(0, 20), "at most " + MOST_LETTERS + " letters", "");
        }
        if (marks.size() > MOST_MARKS || marks.stream().anyMatch(mark -> mark.isBlank() || mark.length() > 40)) {
            throw new InvalidInput(
                    "marks of the lengths",
                    String.valueOf(marks.size()),
                    "at most " + MOST_MARKS + " marks of at most 40 letters",
                    "");
        }
    }
}
