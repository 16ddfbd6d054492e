package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Opening;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Length;

/** Hose that has parted at a coupling, laid open for the solve. */
final class Bursts {
    private Bursts() {}

    /** The same lay with each burst as a piece of its own. */
    static Lay opened(Lay lay) {
        return lay.mapped(Bursts::opened);
    }

    /** Refuses to work out what would be pumped against a burst: nobody raises a pump for one. */
    static void requireWhole(Lay lay) {
        boolean burst = lay.lines().stream().anyMatch(line -> isBurst(line.leg()))
                || lay.joins().values().stream().anyMatch(joint -> isBurst(joint.leg()));
        if (burst) {
            throw new InvalidInput(
                    "what is asked of a lay whose hose has let go",
                    "a tip's pressure or flow",
                    "the pump pressure as it stands: a pump is not raised against a burst",
                    "");
        }
    }

    private static boolean isBurst(Leg leg) {
        return leg.damage().orElse(null) instanceof Damage.Burst
                || leg.end().legs().stream().anyMatch(Bursts::isBurst);
    }

    private static Leg opened(Leg leg) {
        List<Leg> behind = leg.end().legs().stream().map(Bursts::opened).toList();
        End end = behind.isEmpty() ? leg.end() : leg.end().withLegs(behind);
        Leg whole = new Leg(leg.runs(), end, leg.gate(), leg.damage());
        return leg.damage().orElse(null) instanceof Damage.Burst burst ? parted(whole, burst) : whole;
    }

    private static Leg parted(Leg leg, Damage.Burst burst) {
        List<Run> near = new ArrayList<>();
        List<Run> far = new ArrayList<>();
        int left = burst.coupling();
        for (Run run : leg.runs()) {
            int sections = run.sections();
            if (left <= 0) {
                far.add(run);
            } else if (left >= sections) {
                near.add(run);
            } else {
                double share =
                        left * run.hose().section().metres() / run.length().metres();
                near.add(part(run, share));
                far.add(part(run, 1 - share));
            }
            left -= sections;
        }
        requireThere(burst, left);
        Run torn = near.get(near.size() - 1);
        String id =
                "burst at coupling " + burst.coupling() + " of " + torn.hose().id();
        End end = new End.Parted(id, Opening.hoseEnd(torn.hose().diameter()), new Leg(far, leg.end()));
        return new Leg(near, end, leg.gate(), Optional.empty());
    }

    private static void requireThere(Damage.Burst burst, int beyond) {
        if (beyond > 0) {
            String most = String.valueOf(burst.coupling() - beyond);
            throw new InvalidInput(
                    "coupling of a burst", String.valueOf(burst.coupling()), "1 to " + most + " in that chain", "");
        }
    }

    private static Run part(Run run, double share) {
        return new Run(
                run.hose(),
                new Length(share * run.length().metres()),
                new Length(share * run.rise().metres()),
                run.end());
    }
}
