package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.files.kit.Chain;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.ledger.bed.BedChanges;
import org.hosewright.ledger.bed.Lying;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;

/** What lies on the rigs beside what the kit says should. */
final class BedShown {
    private final Kit kit;
    private final List<BedDesk.Kept> kept;
    private final BedChanges changes;
    private final Set<String> ordered;
    private final LocalDate today;

    /** The beds beside a kit.
     *
     * @param ordered ids of the packages that an order in force has pressures for
     */
    BedShown(Kit kit, List<BedDesk.Kept> kept, Set<String> ordered, LocalDate today) {
        this.kit = kit;
        this.kept = kept;
        this.ordered = Set.copyOf(ordered);
        this.today = today;
        changes = new BedChanges(kit, kept.stream().map(BedDesk.Kept::bed).toList());
    }

    ObjectNode json() {
        ObjectNode json = Answer.object();
        ArrayNode engines = json.putArray("engines");
        kit.engines().keySet().forEach(id -> engines.add(engine(id)));
        kit.hoses().keySet().forEach(json.putArray("hoses")::add);
        ObjectNode nozzles = json.putObject("nozzles");
        kit.nozzles()
                .forEach((id, record) -> record.nozzle().settings().keySet().forEach(nozzles.putArray(id)::add));
        return json;
    }

    /** Who looked last at a rig's bed, when, and how many days ago by the company's own calendar. */
    static ObjectNode look(BedDesk.Kept kept, Kit kit, LocalDate today) {
        LocalDate day = LocalDate.ofInstant(kept.head().mark().at(), ZoneId.of(kit.zone()));
        return RecordJson.mark(kept.head().mark()).put("days", ChronoUnit.DAYS.between(day, today));
    }

    private ObjectNode engine(String id) {
        Optional<BedDesk.Kept> found =
                kept.stream().filter(one -> one.bed().engine().equals(id)).findFirst();
        ObjectNode json = found.map(one -> look(one, kit, today)).orElseGet(Answer::object);
        json.put("id", id).put("version", found.map(one -> one.head().version()).orElse(0L));
        found.flatMap(one -> one.bed().reserve()).ifPresent(reserve -> json.put("reserve", reserve));
        ArrayNode lines = json.putArray("lines");
        kit.packages().values().stream()
                .filter(named -> named.engine().equals(id))
                .forEach(named ->
                        lines.add(line(named, found.flatMap(one -> one.bed().find(named.id())))));
        return json;
    }

    private ObjectNode line(HosePackage named, Optional<Lying> lying) {
        ObjectNode json = Answer.object().put("package", named.id());
        json.put("ordered", ordered.contains(named.id()));
        json.set("written", what(named.hose(), named.nozzle(), named.setting()));
        lying.ifPresent(found -> {
            ObjectNode one = what(found.hose(), found.nozzle(), found.setting()).put("note", found.note());
            found.marks().forEach(one.putArray("marks")::add);
            json.set("lying", one);
        });
        changes.reasons(named.id()).forEach(json.putArray("differs")::add);
        return json;
    }

    private ObjectNode what(List<Stretch> hose, String nozzle, String setting) {
        return Answer.object()
                .put("hose", hose.isEmpty() ? "" : Chain.text(hose, kit.hoses(), kit.units()))
                .put("nozzle", nozzle)
                .put("setting", setting);
    }
}
