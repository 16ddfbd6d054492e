package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.files.lay.LayDocument.Joint;
import org.hosewright.files.lay.LayDocument.LaidLine;
import org.hosewright.files.lay.LayDocument.Pumping;
import org.hosewright.files.term.Names;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlReader;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.Laid;

/** The strict reader of a lay file. */
public final class LayFile {
    private static final String ASK = "one of { tip: 50 psi }, { flow: 161 gpm } and { pump: 117 psi }";
    private static final String LINES = "a list of lines, each from one discharge";
    private static final String PUMP = "one of { holds: 117 psi } and { speed: fixed, at: 145 psi, flow: 300 gpm }";

    private final YamlMap file;
    private final LegReader legs;
    private final Kit kit;

    private LayFile(YamlMap file, Kit kit) {
        this.file = file;
        this.kit = kit;
        this.legs = new LegReader(kit);
    }

    /** The lay of a text.
     *
     * @param text YAML of the open format
     * @param kit the company's kit, whose names the lay uses
     * @param source the file's name, for error messages
     * @throws InvalidInput anything in it cannot be used; the message names file, line and key
     */
    public static LayDocument read(String text, Kit kit, String source) {
        return new LayFile(YamlReader.read(text, source), kit).lay();
    }

    /** What a text says, as plain texts, lists and maps in their order; whether it is a lay is not asked.
     *
     * @throws InvalidInput it is no YAML that the open format takes
     */
    public static Map<String, Object> plain(String text, String source) {
        Map<String, Object> plain = new LinkedHashMap<>();
        YamlReader.read(text, source).entries().forEach((key, value) -> plain.put(key, value.plain()));
        return plain;
    }

    /** The names of a lay's tips by the way to each: discharge and legs, with a stroke between. */
    public static Map<String, String> names(LayDocument lay) {
        return TipNames.of(lay).byPath();
    }

    /** The lay of a document, made from the kit's pieces.
     *
     * @param source the file's name, for error messages
     * @throws InvalidInput it holds a piece that is not solved; the message names the piece
     */
    public static Laid laid(LayDocument lay, Kit kit, String source) {
        return Branches.of(lay, kit, source);
    }

    /** The lay of a text, made from the kit's pieces.
     *
     * @throws InvalidInput it holds a piece that is not solved; the message names the piece
     */
    public static Laid readLaid(String text, Kit kit, String source) {
        return Branches.of(read(text, kit, source), kit, source);
    }

    private LayDocument lay() {
        file.only("engine", "pump", "supply", "lines", "joins", "ask");
        String engine = Names.get(file, "engine", kit.engines().keySet());
        YamlValue list = file.get("lines", LINES);
        List<LaidLine> lines = new ArrayList<>();
        for (YamlValue line : list.list()) {
            lines.add(line(line.map(), Names.of(kit.engines(), engine).engine()));
        }
        if (lines.isEmpty()) {
            throw list.refused("lines", "at least one line");
        }
        Map<String, Joint> joins = file.findMap("joins")
                .map(all -> all.byId("a join", (name, value) -> joint(value.map())))
                .orElse(Map.of());
        LayDocument lay = new LayDocument(
                engine,
                file.findMap("pump").map(LayFile::pump),
                file.findMap("supply").map(map -> new SourceReader(kit, engine).source(map)),
                lines,
                joins,
                ask(file.get("ask", ASK)));
        Joins.check(lay, file.place().text());
        return lay;
    }

    private LaidLine line(YamlMap map, Engine engine) {
        String discharge = Names.get(map, "discharge", engine.discharges().keySet());
        return new LaidLine(discharge, legs.leg(map, "discharge"));
    }

    private Joint joint(YamlMap map) {
        return new Joint(legs.appliance(map), legs.leg(map, "appliance"));
    }

    private static Pumping pump(YamlMap map) {
        map.only("holds", "speed", "at", "flow");
        if (map.find("holds").isPresent()) {
            map.only("holds");
            return new Pumping.Holds(Quantities.pressure(map.get("holds", PUMP)));
        }
        YamlValue speed = map.get("speed", PUMP);
        if (!speed.text(PUMP).equals("fixed")) {
            throw speed.refused("speed", "fixed, with at and flow");
        }
        return new Pumping.FixedSpeed(Quantities.pressure(map.get("at", PUMP)), Quantities.flow(map.get("flow", PUMP)));
    }

    private static Ask ask(YamlValue value) {
        YamlMap map = value.map();
        map.only("tip", "flow", "pump");
        List<String> asked = map.entries().keySet().stream()
                .filter(key -> !key.startsWith("x-"))
                .toList();
        if (asked.size() != 1) {
            throw value.refused("ask", ASK);
        }
        return switch (asked.get(0)) {
            case "tip" -> new Ask.AtTip(Quantities.pressure(map.get("tip", ASK)));
            case "flow" -> new Ask.AtFlow(Quantities.flow(map.get("flow", ASK)));
            default -> new Ask.AtPump(Quantities.pressure(map.get("pump", ASK)));
        };
    }
}
