package org.hosewright.hydraulics.limit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.Run;

/** The limits of hose, appliances and nozzle with the nozzle shut; each thing once, where it sees most. */
final class ShutLimits {
    private static final String SHUT = ", nozzle shut";

    private final Map<String, Limit> limits = new LinkedHashMap<>();

    private ShutLimits() {}

    /** The limits in laying order, the nozzle last; what has no figure is left out. */
    static List<Limit> listOf(Line line, ShutOff still) {
        ShutLimits found = new ShutLimits();
        for (int i = 0; i < line.runs().size(); i++) {
            found.add(line.runs().get(i), still, i);
        }
        line.nozzle().most().ifPresent(most -> {
            String what = line.nozzle().id() + SHUT;
            found.keepWorse(new Limit(what, LimitKind.NOZZLE, still.atNozzle(), most, "the most its maker allows"));
        });
        return List.copyOf(found.limits.values());
    }

    private void add(Run run, ShutOff still, int index) {
        run.hose().limit().ifPresent(most -> {
            String what = run.hose().id() + SHUT;
            keepWorse(new Limit(what, LimitKind.HOSE, still.runs().get(index), most, "90 % of its service test"));
        });
        run.end()
                .ifPresent(end -> end.rated().ifPresent(most -> {
                    String what = end.id() + SHUT;
                    keepWorse(
                            new Limit(what, LimitKind.APPLIANCE, still.ends().get(index), most, "its maker's rating"));
                }));
    }

    private void keepWorse(Limit limit) {
        limits.merge(limit.kind() + " " + limit.what(), limit, (a, b) -> a.used() >= b.used() ? a : b);
    }
}
