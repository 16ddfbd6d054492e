package org.hosewright.documents.ground;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.ledger.walk.SectionThere;

/** The sections' ends that one page has room for: up to the first that is not safe, every second or further one of a long
 * way, and the end of the way.
 *
 * @param rows in order
 * @param every which ones are among them; 1 for all
 * @param skipped true where ends beyond the first that is not safe are left out
 */
record RowsThatFit(List<SectionThere> rows, int every, boolean skipped) {
    /** Rows of one page, beside the profile, the map and what must be kept in mind. */
    private static final int MOST = 9;

    /** A limit longer than this breaks. */
    private static final int LETTERS_OF_LIMIT = 44;

    static RowsThatFit of(List<SectionThere> all) {
        int stop = 0;
        while (stop < all.size() - 1 && !isUnsafe(all.get(stop))) {
            stop++;
        }
        int every = Math.max(1, (stop + MOST - 1) / MOST);
        List<SectionThere> rows = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            boolean shown = i < stop && (i + 1) % every == 0;
            if (shown || i == stop || i == all.size() - 1) {
                rows.add(all.get(i));
            }
        }
        return new RowsThatFit(List.copyOf(rows), every, stop < all.size() - 2);
    }

    private static boolean isUnsafe(SectionThere there) {
        return there.line().isPresent() && !there.line().get().isSafe();
    }

    /** Lines that the table takes: long limits break, and the table's head with them. */
    int lines() {
        long broken = rows.stream()
                .flatMap(there -> there.line().stream())
                .filter(line -> GroundParts.limit(line).length() > LETTERS_OF_LIMIT)
                .count();
        int around = (broken > 0 ? 1 : 0) + (says().isEmpty() ? 0 : 1);
        return rows.size() + (int) broken + around;
    }

    /** What is left out, as sentences; empty where nothing is. */
    String says() {
        String thin = every == 1 ? "" : "One section in " + every + " is printed. ";
        return skipped ? thin + "Beyond the first section that is not safe only the end of the way is printed." : thin;
    }
}
