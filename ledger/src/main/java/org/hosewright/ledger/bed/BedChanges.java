package org.hosewright.ledger.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;

/** How what lies on the rigs differs from the packages that ordered pressures rest on. */
public final class BedChanges {
    /** Lengths as near as this are one length [m]: what writing in feet and reading back may lose. */
    private static final double SAME_m = 1e-6;

    private final Kit kit;
    private final List<RigBed> beds;

    /** The differences against one kit.
     *
     * @param kit the kit that the pressures rest on
     * @param beds what lies on the rigs
     */
    public BedChanges(Kit kit, List<RigBed> beds) {
        this.kit = kit;
        this.beds = List.copyOf(beds);
    }

    /** Each difference of one package, as a sentence; empty where it lies as it should or nobody looked. */
    public List<String> reasons(String id) {
        HosePackage named = kit.packages().get(id);
        if (named == null) {
            return List.of();
        }
        return beds.stream()
                .filter(bed -> bed.engine().equals(named.engine()))
                .flatMap(bed -> bed.find(id).stream())
                .flatMap(lying -> reasons(named, lying).stream())
                .toList();
    }

    private List<String> reasons(HosePackage named, Lying lying) {
        List<String> reasons = new ArrayList<>();
        String where = "On " + named.engine() + ", " + named.id();
        if (!same(merged(named.hose()), merged(lying.hose()))) {
            reasons.add(
                    where + " lies as " + words(lying.hose()) + "; its pressures rest on " + words(named.hose()) + ".");
        }
        if (!named.nozzle().equals(lying.nozzle())) {
            reasons.add(
                    where + " has the nozzle " + lying.nozzle() + "; its pressures rest on " + named.nozzle() + ".");
        } else if (!named.setting().equals(lying.setting())) {
            reasons.add(where + " is set to " + lying.setting() + "; its pressures rest on " + named.setting() + ".");
        }
        return reasons;
    }

    /** Neighbours of one hose as one stretch. */
    private static List<Stretch> merged(List<Stretch> chain) {
        List<Stretch> merged = new ArrayList<>();
        for (Stretch part : chain) {
            int last = merged.size() - 1;
            if (last >= 0 && merged.get(last).hose().equals(part.hose())) {
                double sum_m =
                        merged.get(last).length().metres() + part.length().metres();
                merged.set(last, new Stretch(part.hose(), new Length(sum_m)));
            } else {
                merged.add(part);
            }
        }
        return merged;
    }

    private static boolean same(List<Stretch> one, List<Stretch> other) {
        if (one.size() != other.size()) {
            return false;
        }
        for (int i = 0; i < one.size(); i++) {
            double apart_m =
                    one.get(i).length().metres() - other.get(i).length().metres();
            if (!Objects.equals(one.get(i).hose(), other.get(i).hose()) || Math.abs(apart_m) > SAME_m) {
                return false;
            }
        }
        return true;
    }

    private String words(List<Stretch> chain) {
        QuantityShown shown = QuantityShown.of(kit.units());
        String words = merged(chain).stream()
                .map(part -> shown.text(part.length()) + " of " + part.hose())
                .collect(Collectors.joining(" and "));
        return words.isEmpty() ? "an empty bed" : words;
    }
}
