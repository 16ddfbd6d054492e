package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.files.lay.LayDocument.Joint;
import org.hosewright.files.lay.LayDocument.LaidLine;
import org.hosewright.files.lay.LayDocument.Leg;
import org.hosewright.files.term.Names;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.Coupling;
import org.hosewright.ledger.kit.Couplings;
import org.hosewright.ledger.kit.Couplings.Through;
import org.hosewright.ledger.kit.Kit;

/** Whether the couplings of a lay mate, piece by piece from the source to the tips, as far as the kit says them. */
final class Mating {
    private final LayDocument lay;
    private final Kit kit;
    private final Couplings couplings;
    private final List<String> adapters = new ArrayList<>();

    private Mating(LayDocument lay, Kit kit) {
        this.lay = lay;
        this.kit = kit;
        this.couplings = kit.couplings();
    }

    /** A side of a piece.
     *
     * @param piece what it is called
     * @param coupling its size and thread, where the kit says it
     */
    private record Side(String piece, Optional<Coupling> coupling) {}

    /** The adapters that stand between couplings, as sentences.
     *
     * @throws InvalidInput two pieces that do not mate and have no adapter; they are named
     */
    static List<String> check(LayDocument lay, Kit kit) {
        Mating mating = new Mating(lay, kit);
        lay.supply().ifPresent(mating::supply);
        for (LaidLine line : lay.lines()) {
            mating.leg(line.leg(), mating.discharge(lay.engine(), line.discharge()));
        }
        lay.joins().forEach((name, joint) -> mating.leg(joint.leg(), mating.out(joint.appliance(), name)));
        return List.copyOf(mating.adapters);
    }

    private void supply(LaidSource source) {
        source.lines().forEach(this::supply);
        Side from = new Side(
                "the hydrant",
                source.from()
                        .filter(LaidSource.Hydrant.class::isInstance)
                        .map(LaidSource.Hydrant.class::cast)
                        .flatMap(LaidSource.Hydrant::coupling));
        hose(source.hose(), from, source.where());
        source.relay()
                .forEach(pumper -> hose(pumper.hose(), discharge(pumper.engine(), pumper.discharge()), pumper.where()));
    }

    private void leg(Leg leg, Side start) {
        Side last = hose(leg.hose(), start, leg.where());
        LaidEnd end = leg.end();
        if (end instanceof LaidEnd.Tip tip) {
            tip(tip, last, leg.where());
        } else if (end instanceof LaidEnd.Join join) {
            Joint joint = lay.joins().get(join.name());
            mate(last, in(joint == null ? Optional.empty() : joint.appliance(), join.name()), leg.where());
        } else if (end instanceof LaidEnd.Monitor monitor) {
            mate(last, in(monitor.appliance(), "the monitor"), leg.where());
            Side tips = out(monitor.appliance(), "the monitor");
            monitor.tips().values().forEach(tip -> tip(tip, tips, leg.where()));
        } else if (end instanceof LaidEnd.Wye wye) {
            mate(last, in(wye.appliance(), "the " + wye.word()), leg.where());
            Side legs = out(wye.appliance(), "the " + wye.word());
            wye.legs().values().forEach(next -> leg(next, legs));
        } else {
            LaidTree.behind(leg).values().forEach(next -> leg(next, new Side(end.word(), Optional.empty())));
        }
    }

    private void tip(LaidEnd.Tip tip, Side before, String where) {
        mate(
                before,
                new Side(tip.nozzle(), Names.of(kit.nozzles(), tip.nozzle()).coupling()),
                where);
    }

    /** The last side of a chain; that of its start where it has no hose. */
    private Side hose(List<Stretch> chain, Side start, String where) {
        Side last = start;
        for (Stretch part : chain) {
            Side hose = new Side(part.hose(), Names.of(kit.hoses(), part.hose()).coupling());
            mate(last, hose, where);
            last = hose;
        }
        return last;
    }

    private Side discharge(String engine, String discharge) {
        String id = Couplings.discharge(engine, discharge);
        return new Side(discharge, Optional.ofNullable(couplings.discharges().get(id)));
    }

    private Side in(Optional<String> appliance, String word) {
        return new Side(appliance.orElse(word), through(appliance).in());
    }

    private Side out(Optional<String> appliance, String word) {
        return new Side(appliance.orElse(word), through(appliance).out());
    }

    private Through through(Optional<String> appliance) {
        return appliance
                .map(id -> couplings.appliances().getOrDefault(id, Through.UNSAID))
                .orElse(Through.UNSAID);
    }

    private void mate(Side one, Side next, String where) {
        if (one.coupling().isEmpty() || next.coupling().isEmpty()) {
            return;
        }
        Coupling from = one.coupling().get();
        Coupling to = next.coupling().get();
        if (from.fits(to)) {
            return;
        }
        String adapter = couplings
                .findAdapter(from, to)
                .orElseThrow(() -> new InvalidInput(
                        "coupling of " + next.piece() + " behind " + one.piece(),
                        text(to),
                        text(from) + ", or an adapter in the kit with in: " + text(from) + " and out: " + text(to),
                        where));
        adapters.add("The adapter " + adapter + " stands between " + one.piece() + " and " + next.piece()
                + ": it is taken to lose nothing.");
    }

    private String text(Coupling coupling) {
        return QuantityShown.of(kit.units()).size(coupling.size()) + " " + coupling.kind();
    }
}
