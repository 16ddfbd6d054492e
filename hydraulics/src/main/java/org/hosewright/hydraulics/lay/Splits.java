package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;

/** What a piece at the end of a hose does to the water: what it takes of the sum, and the branches behind it. */
final class Splits {
    private Splits() {}

    /** The branches behind a piece, in laying order. */
    static List<Branch> branches(End end) {
        if (end instanceof End.Standpipe standpipe) {
            return standpipe.floors().stream().map(Splits::floor).toList();
        }
        double most_Pa = end instanceof End.Reducer reducer ? reducer.holds().pascals() : Double.POSITIVE_INFINITY;
        List<ApplianceLoss> entry = perLeg(end).stream().toList();
        List<Branch> branches = new ArrayList<>();
        end.legs().forEach(leg -> branches.add(new Branch(entry, 0, most_Pa, leg)));
        return branches;
    }

    /** What a piece takes at the sum of its flows. */
    static Optional<ApplianceLoss> total(End end) {
        if (end instanceof End.Standpipe standpipe) {
            return Optional.of(quadratic(standpipe.loss()));
        }
        return appliance(end)
                .filter(named -> named.per() == Appliance.Per.TOTAL)
                .map(Appliance::loss);
    }

    /** The pressure that a piece's own height takes [Pa]. */
    static double lift_Pa(End end) {
        if (end instanceof End.Standpipe standpipe) {
            return lift_Pa(standpipe.rise());
        }
        return end instanceof End.Monitor monitor ? lift_Pa(monitor.rise()) : 0;
    }

    static double lift_Pa(Length rise) {
        return Constants.WATER_PA_PER_M * rise.metres();
    }

    /** The named appliance that a hose ends in. */
    static Optional<Appliance> appliance(End end) {
        if (end instanceof End.Wye wye) {
            return wye.appliance();
        }
        return end instanceof End.Monitor monitor ? monitor.appliance() : Optional.empty();
    }

    /** The word for a piece in a trail. */
    static String name(End end) {
        if (end instanceof End.Reducer reducer) {
            return reducer.id();
        }
        if (end instanceof End.InlineEductor eductor) {
            return eductor.id();
        }
        if (end instanceof End.Standpipe) {
            return "standpipe";
        }
        String plain = end instanceof End.Monitor ? "monitor" : end instanceof End.Parted ? "burst" : "wye";
        return appliance(end).map(Appliance::id).orElse(plain);
    }

    /** The loss of a piece at one leg's flow, where it is stated so. */
    static Optional<ApplianceLoss> perLeg(End end) {
        return appliance(end).filter(named -> named.per() == Appliance.Per.LEG).map(Appliance::loss);
    }

    static ApplianceLoss quadratic(PointLoss loss) {
        return new ApplianceLoss.Quadratic(Known.of(loss));
    }

    private static Branch floor(End.Floor floor) {
        List<ApplianceLoss> entry = floor.outlet() instanceof FloorOutlet.Restrictor restrictor
                ? List.of(quadratic(restrictor.loss()))
                : List.of();
        return new Branch(entry, lift_Pa(floor.rise()), floor.outlet().most_Pa(), floor.leg());
    }
}
