package org.hosewright.hydraulics.lay;

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

    /** Refuses water from a standpipe's outlet of a kind that nobody has looked up. */
    static void requireKnown(Lay lay) {
        lay.lines().forEach(line -> requireKnown(line.leg()));
        lay.joins().values().forEach(joint -> requireKnown(joint.leg()));
    }

    private static void requireKnown(Leg leg) {
        if (leg.end() instanceof End.Standpipe standpipe) {
            for (End.Floor floor : standpipe.floors()) {
                if (floor.outlet() instanceof FloorOutlet.Unknown && floor.leg().isOpen()) {
                    throw new InvalidInput(
                            "kind of the standpipe outlet " + floor.name(),
                            "unknown",
                            "plain, a restrictor, or a reducer with what it holds: without it there is no pressure to give",
                            "");
                }
            }
        }
        leg.end().legs().forEach(Reducers::requireKnown);
    }
}
