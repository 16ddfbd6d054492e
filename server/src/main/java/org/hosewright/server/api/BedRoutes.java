package org.hosewright.server.api;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hosewright.files.kit.Chain;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.bed.Lying;
import org.hosewright.ledger.bed.RigBed;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.leaf.LeafKind;

/** What lies on the rigs: looked at, and written down at the daily check. */
final class BedRoutes {
    private final OrderDesk orders;
    private final BedDesk beds;
    private final CurrentKit current;

    BedRoutes(OrderDesk orders, CurrentKit current) {
        this.orders = orders;
        this.beds = orders.beds();
        this.current = current;
    }

    List<Route> list() {
        return List.of(Route.get("/beds", this::all), Route.post("/beds/{engine}", LeafKind.BED.hat(), this::save));
    }

    private void all(Context answer) {
        Kit kit = current.get().document().kit();
        Answer.json(answer, new BedShown(kit, beds.list(), orders.ordered(), orders.today(kit)).json());
    }

    private void save(Context answer) {
        Asked asked = Asked.of(answer, Set.of("who", "why", "basedOn", "reserve", "lines"));
        Kit kit = current.get().document().kit();
        String engine = answer.pathParam("engine");
        of(kit.engines(), "engine", engine);
        asked.findText("reserve").ifPresent(reserve -> of(kit.engines(), "reserve rig", reserve));
        List<Lying> lines = asked.objects("lines").stream()
                .map(line ->
                        line(line.only(Set.of("package", "hose", "marks", "nozzle", "setting", "note")), engine, kit))
                .toList();
        var bed = new RigBed(engine, asked.findText("reserve"), lines);
        LeafJson.send(answer, beds.save(bed, asked.number("basedOn"), kit, asked.act()));
    }

    private static Lying line(Asked line, String engine, Kit kit) {
        HosePackage named = of(kit.packages(), "package", line.text("package"));
        if (!named.engine().equals(engine)) {
            throw new InvalidInput("package", named.id(), "a package of " + engine, "");
        }
        String hose = line.text("hose").strip();
        Nozzle nozzle = of(kit.nozzles(), "nozzle", line.text("nozzle")).nozzle();
        return new Lying(
                named.id(),
                hose.isEmpty() ? List.of() : Chain.parse(hose, kit.hoses()),
                line.texts("marks"),
                nozzle.id(),
                setting(nozzle, line.text("setting")),
                line.text("note").strip());
    }

    private static <T> T of(Map<String, T> known, String what, String id) {
        T found = known.get(id);
        if (found == null) {
            throw new InvalidInput(what, id, "one that the kit has: " + String.join(", ", known.keySet()), "");
        }
        return found;
    }

    private static String setting(Nozzle nozzle, String setting) {
        if (!nozzle.settings().containsKey(setting)) {
            throw new InvalidInput(
                    "setting of " + nozzle.id(),
                    setting,
                    String.join(", ", nozzle.settings().keySet()),
                    "");
        }
        return setting;
    }
}
