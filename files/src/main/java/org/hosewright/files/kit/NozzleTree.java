package org.hosewright.files.kit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.ledger.kit.NozzleRecord;

/** Nozzles as plain keys and values in the order of the open format. */
record NozzleTree(Written written) {
    Map<String, Object> nozzle(NozzleRecord record) {
        Nozzle nozzle = record.nozzle();
        Map<String, Object> map = new LinkedHashMap<>();
        if (nozzle.hasSettings()) {
            boolean fogs = nozzle.settings().values().stream().allMatch(Fog.class::isInstance);
            map.put("kind", fogs ? "selectable" : "break-apart");
            Map<String, Object> settings = new LinkedHashMap<>();
            nozzle.settings().forEach((name, tip) -> settings.put(name, tip(tip)));
            map.put("settings", settings);
        } else {
            map.putAll(tip(nozzle.rated(Nozzle.ONLY)));
        }
        KitTree.put(map, "most", nozzle.most().map(written::pressure));
        KitTree.put(map, "flow", nozzle.flow().map(written::known));
        KitTree.put(map, "gauged", record.gauged().map(Object::toString));
        KitTree.put(map, "coupling", record.coupling().map(written::coupling));
        return map;
    }

    private Map<String, Object> tip(Tip tip) {
        Map<String, Object> map = new LinkedHashMap<>();
        if (tip instanceof SmoothBore bore) {
            map.put("kind", "smooth-bore");
            map.put("bore", written.size(bore.bore()));
            map.put("at", written.pressure(bore.at()));
        } else if (tip instanceof Fog fog) {
            map.put("kind", "fog");
            map.put("rated", written.flow(fog.rated()) + " @ " + written.pressure(fog.at()));
        } else if (tip instanceof Automatic automatic) {
            map.put("kind", "automatic");
            map.put("holds", written.pressure(automatic.holds()));
            map.put("from", written.flow(automatic.from()));
            map.put("to", written.flow(automatic.to()));
        }
        return map;
    }
}
