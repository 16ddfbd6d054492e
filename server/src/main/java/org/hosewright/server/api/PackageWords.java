package org.hosewright.server.api;

import java.util.stream.Collectors;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** A package in words. */
final class PackageWords {
    private PackageWords() {}

    /** "engine-41, crosslay-1: 200 ft attack-175, seven-eighths". */
    static String of(Kit kit, HosePackage named) {
        QuantityShown shown = QuantityShown.of(kit.units());
        String hose = named.hose().stream()
                .map(part -> shown.text(part.length()) + " " + part.hose())
                .collect(Collectors.joining(" + "));
        String setting = named.setting().isEmpty() ? "" : " (" + named.setting() + ")";
        return named.engine() + ", " + named.discharge() + ": " + hose + ", " + named.nozzle() + setting;
    }

    /** True where a test night stands behind the loss of every hose in it. */
    static boolean measured(Kit kit, HosePackage named) {
        return named.hose().stream()
                .allMatch(part ->
                        KitLines.get(kit.hoses(), part.hose(), "hose").basis().kind() == Basis.Kind.TEST);
    }
}
