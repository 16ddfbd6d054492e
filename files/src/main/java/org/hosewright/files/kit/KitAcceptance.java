package org.hosewright.files.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hosewright.ledger.drill.Acceptance;
import org.hosewright.ledger.drill.DrillReport;
import org.hosewright.ledger.kit.Kit;

/** The taking over of a night's numbers into the text of a kit: what the night changes is written, all else stays. */
public final class KitAcceptance {
    private static final Set<String> NUMBERS = Set.of("loss", "flow", "offset");

    private KitAcceptance() {}

    /** A kit with a night's numbers in it.
     *
     * @param document the new kit; the old one where the night determines nothing
     * @param taken each number taken over, in the order of the kit
     */
    public record Accepted(KitDocument document, List<Taken> taken) {
        public Accepted {
            taken = List.copyOf(taken);
        }
    }

    /** One number taken over.
     *
     * @param path where it stands in the kit file
     * @param was the text that stood there; empty where none did
     * @param now the text that stands there
     */
    public record Taken(List<String> path, String was, String now) {
        public Taken {
            path = List.copyOf(path);
        }
    }

    /** The kit that holds a night's numbers, their standard errors to three digits.
     *
     * @param before the kit as it stands
     * @param report the night, analysed with that kit
     */
    public static Accepted of(KitDocument before, DrillReport report) {
        Kit after = Acceptance.of(NightName.named(report));
        Map<String, Object> was = KitTree.of(before.kit());
        Map<String, Object> now = KitTree.of(after);
        List<KitChange> changes = Difference.between(was, now, KitTree.rounded(after));
        List<Taken> taken = new ArrayList<>();
        for (KitChange change : changes) {
            if (change instanceof KitChange.Set set && isNumber(set.path())) {
                taken.add(new Taken(set.path(), text(was, set.path()), set.yamlValue()));
            }
        }
        return taken.isEmpty() ? new Accepted(before, taken) : new Accepted(before.with(changes), taken);
    }

    private static boolean isNumber(List<String> path) {
        return NUMBERS.contains(path.get(path.size() - 1)) && !path.get(0).equals("evidence");
    }

    private static String text(Map<String, Object> tree, List<String> path) {
        Object value = tree;
        for (String key : path) {
            value = value instanceof Map<?, ?> map && map.containsKey(key)
                    ? java.util.Objects.requireNonNull(map.get(key))
                    : "";
        }
        return value.toString();
    }
}
