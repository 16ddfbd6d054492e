package org.hosewright.files.result;

import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.lay.FoamState;
import org.hosewright.hydraulics.lay.Intake;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.Piece;
import org.hosewright.hydraulics.lay.Surge;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The fields of what happens at each piece of a lay and along its supply. */
final class PieceFields {
    private final LayState state;
    private final UnitSystem units;

    PieceFields(LayState state, UnitSystem units) {
        this.state = state;
        this.units = units;
    }

    /** The engines of a relay, the one at the source first. */
    List<Map<String, Object>> pumps() {
        return state.intake().stream()
                .flatMap(intake -> intake.pumps().stream())
                .map(this::pump)
                .toList();
    }

    private Map<String, Object> pump(Intake.PumpState pump) {
        return new Fields(units)
                .put("engine", pump.engine())
                .put("pressure", pump.pump())
                .put("flow", pump.flow())
                .put("intake", pump.intake())
                .put("least", pump.least())
                .map();
    }

    /** Every piece from the pump onward. */
    List<Map<String, Object>> pieces() {
        return state.parts().pieces().stream().map(this::piece).toList();
    }

    /** The hose of the supply, from the source on. */
    List<Map<String, Object>> supply() {
        return state.intake().stream()
                .flatMap(intake -> intake.hoses().stream())
                .map(this::piece)
                .toList();
    }

    private Map<String, Object> piece(Piece piece) {
        Fields fields = new Fields(units)
                .put("id", piece.place())
                .put("what", piece.what())
                .put("flow", piece.flow())
                .put("loss", piece.loss())
                .put("before", piece.before())
                .put("after", piece.after());
        piece.surge().ifPresent(surge -> {
            fields.put("velocity", velocity(surge.velocity_ms()));
            fields.put("suddenStop", surge.rise());
        });
        return fields.map();
    }

    /** What the rises of a sudden stop rest on: they are estimates, and no limit counts them. */
    Map<String, Object> suddenStop() {
        return Map.of("estimate", true, "waveSpeed", velocity(Surge.WAVE_MS));
    }

    private Map<String, Object> velocity(double velocity_ms) {
        boolean us = units == UnitSystem.US;
        double shown = us ? velocity_ms / Constants.FOOT_M : velocity_ms;
        return Map.of("value", Fields.number(shown), "unit", us ? "ft/s" : "m/s");
    }

    List<Map<String, Object>> reducers() {
        return state.parts().reducers().stream()
                .map(one -> new Fields(units)
                        .put("what", one.name())
                        .put("holds", one.holds())
                        .put("before", one.before())
                        .put("active", one.active())
                        .put("feeds", one.feeds())
                        .map())
                .toList();
    }

    List<Map<String, Object>> foam() {
        return state.parts().foam().stream().map(this::foam).toList();
    }

    private Map<String, Object> foam(FoamState foam) {
        return new Fields(units)
                .put("what", foam.id())
                .put("inlet", foam.inlet())
                .put("back", foam.back())
                .put("mostBack", foam.mostBack())
                .put("flow", foam.flow())
                .put("draws", foam.draws())
                .put("concentrate", foam.concentrate())
                .map();
    }

    List<Map<String, Object>> bursts() {
        return state.parts().bursts().stream()
                .map(one -> new Fields(units)
                        .put("what", one.id())
                        .put("flow", one.flow())
                        .map())
                .toList();
    }
}
