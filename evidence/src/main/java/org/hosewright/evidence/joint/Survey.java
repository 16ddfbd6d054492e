package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hosewright.evidence.night.Laid;
import org.hosewright.evidence.night.Night;
import org.hosewright.evidence.night.Reading;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.error.InvalidInput;

/** A night made ready: its unknowns, each reading as a line, and what was taken as given.
 *
 * @param night the night
 * @param joint all readings weighed together
 * @param assumed what it takes as given, as sentences
 */
public record Survey(Night night, Joint joint, List<String> assumed) {
    public Survey {
        assumed = List.copyOf(assumed);
    }

    /** Makes a night ready.
     *
     * @throws InvalidInput a reading is impossible, names gear that is not there, or bears an id for the second time
     */
    public static Survey of(Night night) {
        Rack rack = new Rack(night.gear());
        Refusal refusal = new Refusal(rack, night.units());
        Collected collected = new Collected();
        LineMaker maker = new LineMaker(rack, collected);
        Set<String> ids = new LinkedHashSet<>();
        List<Line> lines = new ArrayList<>();
        for (Reading reading : night.readings()) {
            if (!ids.add(reading.id())) {
                throw new InvalidInput("reading id", reading.id(), "an id that no other reading has", "");
            }
            refusal.check(reading);
            lines.add(maker.line(reading));
        }
        Unknowns unknowns = collected.unknowns();
        List<String> assumed = new Assumptions(night, rack, unknowns).list();
        return new Survey(night, new Joint(unknowns, lines, Scatter.EXPECTED, 1), assumed);
    }

    /** The tip that a reading was taken with, as its maker rates it. */
    public Tip tip(Reading reading) {
        return new Rack(night.gear()).tip(reading);
    }

    /** A hose of the night's gear. */
    public Hose hose(String id) {
        return new Rack(night.gear()).hose(id);
    }

    /** True for an instrument that no reading named. */
    public boolean isUnnamed(Unknown unknown) {
        return List.of(Rack.PUMP_GAUGE, Rack.TIP_GAUGE, Rack.MID_GAUGE, Rack.METER)
                .contains(unknown.id());
    }

    /** True where a reading's tip pressure says nothing about its flow although water ran. */
    public boolean isBlind(Reading reading) {
        return !reading.laid().shut() && TipPrior.isBlind(tip(reading));
    }

    /** Readings that share a lay, as places; a lay without a name is told by discharge, hose and rise. */
    public List<List<Integer>> listLays() {
        Map<String, List<Integer>> lays = new LinkedHashMap<>();
        for (int i = 0; i < night.readings().size(); i++) {
            lays.computeIfAbsent(layName(i), any -> new ArrayList<>()).add(i);
        }
        return new ArrayList<>(lays.values());
    }

    /** The readings that share a reading's lay, itself included. */
    public List<Integer> layOf(int place) {
        List<Integer> sharing = new ArrayList<>();
        for (int i = 0; i < night.readings().size(); i++) {
            if (layName(i).equals(layName(place))) {
                sharing.add(i);
            }
        }
        return sharing;
    }

    private String layName(int place) {
        Laid laid = night.readings().get(place).laid();
        return laid.lay().isEmpty() ? laid.discharge() + "|" + laid.hose() + "|" + laid.rise() : laid.lay();
    }
}
