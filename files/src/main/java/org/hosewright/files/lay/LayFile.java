package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.hosewright.files.lay.LayDocument.End;
import org.hosewright.files.lay.LayDocument.Hydrant;
import org.hosewright.files.lay.LayDocument.Joint;
import org.hosewright.files.lay.LayDocument.LaidLine;
import org.hosewright.files.lay.LayDocument.Leg;
import org.hosewright.files.lay.LayDocument.Supply;
import org.hosewright.files.term.Names;
import org.hosewright.files.term.Quantities;
import org.hosewright.files.yaml.YamlMap;
import org.hosewright.files.yaml.YamlReader;
import org.hosewright.files.yaml.YamlValue;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.Kind;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.lay.Laid;
import org.hosewright.ledger.lay.SingleLay;

/** The strict reader of a lay file. */
public final class LayFile {
    private static final String ASK = "one of { tip: 50 psi }, { flow: 161 gpm } and { pump: 117 psi }";
    private static final String LINES = "a list of lines, each from one discharge";

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

    /** The lay of a text that is one line without branches.
     *
     * @throws InvalidInput it is more than that; the message names the piece
     */
    public static SingleLay readLine(String text, Kit kit, String source) {
        LayFile reader = new LayFile(YamlReader.read(text, source), kit);
        return OneLine.of(reader.lay(), source);
    }

    /** The lay of a text, made from the kit's pieces.
     *
     * @throws InvalidInput it holds a piece that is not solved; the message names the piece
     */
    public static Laid readLaid(String text, Kit kit, String source) {
        LayDocument lay = read(text, kit, source);
        return OneLine.is(lay) ? OneLine.of(lay, source) : Branches.of(lay, kit, source);
    }

    private LayDocument lay() {
        file.only("engine", "supply", "lines", "joins", "ask");
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
                engine, file.findMap("supply").map(this::supply), lines, joins, ask(file.get("ask", ASK)));
        checkJoins(lay);
        return lay;
    }

    private LaidLine line(YamlMap map, Engine engine) {
        String discharge = Names.get(map, "discharge", engine.discharges().keySet());
        return new LaidLine(discharge, legs.leg(map, "discharge"));
    }

    private Joint joint(YamlMap map) {
        return new Joint(legs.appliance(map), legs.leg(map, "appliance"));
    }

    private Supply supply(YamlMap map) {
        map.only("hydrant", "hose", "rise", "keep");
        return new Supply(
                map.findMap("hydrant").map(LayFile::hydrant),
                legs.chain(map),
                map.find("rise").map(Quantities::rise),
                map.find("keep").map(Quantities::pressure));
    }

    private static Hydrant hydrant(YamlMap map) {
        map.only("static", "residual", "at", "tested");
        YamlValue residual = map.get("residual", Kind.PRESSURE.inWords());
        Hydrant hydrant = new Hydrant(
                Quantities.pressure(map.get("static", Kind.PRESSURE.inWords())),
                Quantities.pressure(residual),
                Quantities.flow(map.get("at", Kind.FLOW.inWords())),
                map.find("tested").map(Quantities::day));
        if (hydrant.residual().pascals() >= hydrant.still().pascals()) {
            throw residual.refused("residual pressure", "less than the static pressure");
        }
        return hydrant;
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

    /** Refuses joins that nothing leads to, and ends in joins that are not described. */
    private void checkJoins(LayDocument lay) {
        Set<String> named = new TreeSet<>();
        lay.lines().forEach(line -> collect(line.leg(), named));
        lay.joins().values().forEach(joint -> collect(joint.leg(), named));
        for (String name : named) {
            if (!lay.joins().containsKey(name)) {
                throw new InvalidInput(
                        "join",
                        name,
                        "a join that stands under joins",
                        file.place().text());
            }
        }
        for (String name : lay.joins().keySet()) {
            if (!named.contains(name)) {
                throw new InvalidInput(
                        "join", name, "a join that lines end in", file.place().text());
            }
        }
    }

    private static void collect(Leg leg, Set<String> named) {
        if (leg.end() instanceof End.Join join) {
            named.add(join.name());
        } else if (leg.end() instanceof End.Wye wye) {
            wye.legs().values().forEach(one -> collect(one, named));
        }
    }
}
