package org.hosewright.files.bed;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hosewright.files.json.JsonObject;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.bed.Lying;
import org.hosewright.ledger.bed.RigBed;
import org.hosewright.ledger.canonical.CanonicalJson;

/** What lies on a rig as text: canonical JSON (RFC 8785), each length with its unit. */
public final class BedText {
    private static final int FORMAT = 1;
    private static final Set<String> KEYS = Set.of("format", "engine", "reserve", "lines");
    private static final Set<String> LINE = Set.of("package", "hose", "marks", "nozzle", "setting", "note");
    private static final Set<String> PART = Set.of("hose", "length");

    private BedText() {}

    /** The text of a bed.
     *
     * @param units that its lengths are written in
     */
    public static String write(RigBed bed, UnitSystem units) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("format", FORMAT);
        tree.put("engine", bed.engine());
        bed.reserve().ifPresent(reserve -> tree.put("reserve", reserve));
        tree.put("lines", bed.lines().stream().map(line -> tree(line, units)).toList());
        return CanonicalJson.text(tree);
    }

    /** The bed that a text holds.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput it is not a bed of this edition
     */
    public static RigBed read(String text) {
        JsonObject json = JsonObject.of(text, "bed").only(KEYS).edition(FORMAT);
        List<Lying> lines = json.objects("lines").stream()
                .map(line -> line.only(LINE))
                .map(BedText::line)
                .toList();
        return new RigBed(json.text("engine"), json.findText("reserve"), lines);
    }

    private static Lying line(JsonObject line) {
        List<Stretch> hose = line.objects("hose").stream()
                .map(part -> part.only(PART))
                .map(part -> new Stretch(part.text("hose"), QuantityText.length(part.text("length"))))
                .toList();
        return new Lying(
                line.text("package"),
                hose,
                line.texts("marks"),
                line.text("nozzle"),
                line.text("setting"),
                line.text("note"));
    }

    private static Map<String, Object> tree(Lying line, UnitSystem units) {
        QuantityShown shown = QuantityShown.of(units);
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("package", line.hosePackage());
        tree.put(
                "hose",
                line.hose().stream()
                        .map(part -> Map.of("hose", part.hose(), "length", shown.file(part.length(), units.length())))
                        .toList());
        tree.put("marks", line.marks());
        tree.put("nozzle", line.nozzle());
        tree.put("setting", line.setting());
        tree.put("note", line.note());
        return tree;
    }
}
