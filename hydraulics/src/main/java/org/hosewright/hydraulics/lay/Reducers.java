package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;

/** The reducing pieces of a lay by name. */
final class Reducers {
    private Reducers() {}

    /** The name of the reducing piece that a branch begins with. */
    static String name(End end, int index) {
        return end instanceof End.Standpipe standpipe
                ? "outlet " + standpipe.floors().get(index).name()
                : Splits.name(end);
    }

    /** True where no water comes from an outlet of a kind that nobody has looked up. */
    static boolean isKnown(Lay lay) {
        return legs(lay).stream().allMatch(leg -> findUnknown(leg).isEmpty());
    }

    /** Refuses water from a standpipe's outlet of a kind that nobody has looked up. */
    static void requireKnown(Lay lay) {
        for (Leg leg : legs(lay)) {
            findUnknown(leg).ifPresent(floor -> {
                throw new InvalidInput(
                        "kind of the standpipe outlet " + floor,
                        "unknown",
                        "plain, a restrictor, or a reducer with what it holds: without it there is no pressure to give",
                        "");
            });
        }
    }

    private static List<Leg> legs(Lay lay) {
        List<Leg> legs = new ArrayList<>();
        lay.lines().forEach(line -> legs.add(line.leg()));
        lay.joins().values().forEach(joint -> legs.add(joint.leg()));
        return legs;
    }

    /** The first floor that water is taken from and whose outlet is not known. */
    private static Optional<String> findUnknown(Leg leg) {
        if (leg.end() instanceof End.Standpipe standpipe) {
            for (End.Floor floor : standpipe.floors()) {
                if (floor.outlet() instanceof FloorOutlet.Unknown && floor.leg().isOpen()) {
                    return Optional.of(floor.name());
                }
            }
        }
        return leg.end().legs().stream()
                .map(Reducers::findUnknown)
                .flatMap(Optional::stream)
                .findFirst();
    }
}
