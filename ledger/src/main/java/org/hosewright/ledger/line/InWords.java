package org.hosewright.ledger.line;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;

/** A package in the words that papers and pages use. */
public final class InWords {
    private InWords() {}

    /** A count of readings: "8 readings", "1 reading". */
    public static String readings(long count) {
        return count + (count == 1 ? " reading" : " readings");
    }

    /** That a discharge's piping was never flown; empty where its loss is known. */
    public static Optional<String> unknownPiping(Discharge discharge) {
        return discharge.loss().isPresent()
                ? Optional.empty()
                : Optional.of("The piping loss of " + discharge.id()
                        + " is not known and counted as none: these pressures may be too low. Fly it.");
    }

    /** Its hose: "1 3/4 in attack-175, then 3 in leader-3". */
    public static String hose(Kit kit, List<Stretch> chain) {
        QuantityShown shown = QuantityShown.of(kit.units());
        Set<String> parts = new LinkedHashSet<>();
        for (Stretch part : chain) {
            Hose hose = KitLines.hose(kit, part.hose());
            parts.add(shown.size(hose.diameter()) + " " + hose.id());
        }
        return String.join(", then ", parts);
    }

    /** Its nozzle: "7/8 in smooth bore at 50 psi". */
    public static String nozzle(Kit kit, String id, String setting) {
        Tip tip = KitLines.nozzle(kit, id, setting).rated(setting);
        String words = tip(QuantityShown.of(kit.units()), tip);
        return setting.isEmpty() ? words : words + ", set to " + setting;
    }

    private static String tip(QuantityShown shown, Tip tip) {
        if (tip instanceof SmoothBore bore) {
            return shown.size(bore.bore()) + " smooth bore at " + shown.text(bore.at());
        }
        if (tip instanceof Fog fog) {
            return "fog, " + shown.text(fog.rated()) + " at " + shown.text(fog.at());
        }
        Automatic automatic = (Automatic) tip;
        return "automatic fog, holds " + shown.text(automatic.holds()) + " from " + shown.text(automatic.from())
                + " to " + shown.text(automatic.to());
    }

    /** What the losses of a package rest on: "attack-175: night drill-night of 2026-05-12, 8 readings". */
    public static String evidence(Kit kit, HosePackage named) {
        Set<String> parts = new LinkedHashSet<>();
        for (Stretch part : named.hose()) {
            HoseRecord record = KitLines.get(kit.hoses(), part.hose(), "hose");
            parts.add(part.hose() + ": " + basis(kit, record.basis()));
        }
        Optional<Basis> piping = Optional.ofNullable(KitLines.get(kit.engines(), named.engine(), "engine")
                .pipingBasis()
                .get(named.discharge()));
        piping.ifPresent(basis -> parts.add(named.discharge() + " piping: " + basis(kit, basis)));
        return String.join("; ", parts);
    }

    private static String basis(Kit kit, Basis basis) {
        if (basis.kind() != Basis.Kind.TEST) {
            return "not measured, from "
                    + (basis.kind() == Basis.Kind.ESTIMATE ? "an estimate" : "the " + basis.text());
        }
        List<String> words = new ArrayList<>();
        NightRecord night = kit.evidence().get(basis.night());
        words.add("night " + basis.night());
        if (night != null) {
            night.date().ifPresent(date -> words.add(date.toString()));
            night.readings().ifPresent(count -> words.add(readings(count)));
            night.tested()
                    .ifPresent(length -> words.add(
                            "tested to " + QuantityShown.of(kit.units()).text(length)));
        }
        return String.join(", ", words);
    }
}
