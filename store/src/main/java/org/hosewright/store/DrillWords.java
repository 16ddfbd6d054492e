package org.hosewright.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillChange.AddRow;
import org.hosewright.ledger.drill.DrillChange.EditHead;
import org.hosewright.ledger.drill.DrillChange.EditRow;
import org.hosewright.ledger.drill.DrillChange.RemoveRow;
import org.hosewright.ledger.drill.DrillChange.Rule;
import org.hosewright.ledger.drill.RulingRecord.Verdict;

/** What the history says of changes to a drill. */
final class DrillWords {
    private DrillWords() {}

    /** As in "added 2 readings, set 1 reading aside". */
    static String of(List<DrillChange> changes) {
        var counts = new LinkedHashMap<String, Integer>();
        changes.forEach(change -> counts.merge(pattern(change), 1, Integer::sum));
        return String.join(
                ", ", counts.entrySet().stream().map(DrillWords::part).toList());
    }

    static String readings(int count) {
        return count == 1 ? "1 reading" : count + " readings";
    }

    private static String part(Map.Entry<String, Integer> count) {
        return count.getKey().replace("#", readings(count.getValue()));
    }

    private static String pattern(DrillChange change) {
        if (change instanceof Rule rule) {
            return ruled(rule.verdict());
        } else if (change instanceof AddRow) {
            return "added #";
        } else if (change instanceof EditRow) {
            return "changed #";
        } else if (change instanceof EditHead) {
            return "changed name, date or columns";
        }
        return change instanceof RemoveRow ? "removed #" : "put back #";
    }

    private static String ruled(Verdict verdict) {
        return switch (verdict) {
            case USE -> "ruled to use #";
            case SET_ASIDE -> "set # aside";
            case AS_JUDGED -> "took back the ruling on #";
        };
    }
}
