package org.hosewright.ledger.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.Coupling;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.InWords;

/** What of a neighbour's package bears a name of ours and is not ours, and what does not go together with ours. */
final class Conflicts {
    private final Kit ours;
    private final QuantityShown shown;

    Conflicts(Kit ours) {
        this.ours = ours;
        this.shown = QuantityShown.of(ours.units());
    }

    /** Each conflict, as a sentence. */
    List<String> of(HandedPackage theirs) {
        List<String> found = new ArrayList<>();
        Optional.ofNullable(ours.packages().get(theirs.name()))
                .ifPresent(same -> found.add("We have a package " + theirs.name()
                        + " too. It is another line: ours is " + hose(same) + " with "
                        + InWords.nozzle(ours, same.nozzle(), same.setting()) + "."));
        theirs.hose().forEach(hose -> hose(hose, found));
        HandedNozzle nozzle = theirs.nozzle();
        if (ours.nozzles().containsKey(nozzle.name())) {
            found.add("We have a nozzle " + nozzle.name() + " too. Theirs is " + nozzle.what() + ", "
                    + shown.text(nozzle.flow()) + " at " + shown.text(nozzle.at()) + "; it is not the same nozzle.");
        }
        coupling("nozzle " + nozzle.name(), nozzle.coupling(), found);
        return found.stream().distinct().toList();
    }

    private void hose(HandedHose theirs, List<String> found) {
        HoseRecord same = ours.hoses().get(theirs.name());
        if (same != null) {
            Hose hose = same.hose();
            found.add("We have a hose " + theirs.name() + " too. Ours is " + shown.size(hose.diameter()) + " in "
                    + shown.text(hose.section()) + " sections, theirs " + shown.size(theirs.diameter()) + " in "
                    + shown.text(theirs.section()) + " sections; it is not the same hose, and no loss of ours is its.");
        }
        coupling("hose " + theirs.name(), theirs.coupling(), found);
    }

    private void coupling(String what, Optional<Coupling> theirs, List<String> found) {
        if (theirs.isEmpty()) {
            found.add("They do not say what their " + what + " is coupled by: ask before you rely on it.");
            return;
        }
        List<Coupling> known = couplings();
        if (!known.isEmpty() && known.stream().noneMatch(theirs.get()::fits)) {
            found.add("Their " + what + " is coupled by " + theirs.get().words()
                    + "; our kit names none like it: bring an adapter.");
        }
    }

    private List<Coupling> couplings() {
        return Stream.concat(
                        ours.hoses().values().stream().map(HoseRecord::coupling),
                        ours.nozzles().values().stream().map(record -> record.coupling()))
                .flatMap(Optional::stream)
                .toList();
    }

    private String hose(HosePackage named) {
        return InWords.hose(ours, named.hose());
    }
}
