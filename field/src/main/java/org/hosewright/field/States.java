package org.hosewright.field;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.lay.FoamState;
import org.hosewright.hydraulics.lay.Intake;
import org.hosewright.hydraulics.lay.Lay;
import org.hosewright.hydraulics.lay.LaySolver;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.Piece;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.network.Network;
import org.hosewright.hydraulics.network.NetworkSolver;
import org.hosewright.hydraulics.network.NetworkState;

/** Solved states as members of an answer, in SI, the unit in each name. */
final class States {
    private States() {}

    static Map<String, Object> of(Line line, Ask ask) {
        Map<String, Object> answer = members(LineSolver.solve(line, ask));
        answer.put(
                "pumpStandardError_Pa",
                LineSolver.neededPump(line, LossErrors.UNCORRELATED, ask).standardErrorSi());
        return answer;
    }

    static Map<String, Object> of(Lay lay, Ask ask) {
        LayState state = LaySolver.solve(lay, ask);
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put("pump_Pa", state.pump().pascals());
        answer.put("flow_m3s", state.flow().cubicMetresPerSecond());
        answer.put("tips", state.tips().stream().map(States::tip).toList());
        List<Object> gates = new ArrayList<>();
        for (LayState.Gate gate : state.gates()) {
            Map<String, Object> members = new LinkedHashMap<>();
            members.put("discharge", gate.discharge());
            members.put("down_Pa", gate.down().pascals());
            gates.add(members);
        }
        answer.put("gates", gates);
        if (!state.parts().reducers().isEmpty()) {
            answer.put(
                    "reducers",
                    state.parts().reducers().stream().map(States::reduced).toList());
        }
        if (!state.parts().foam().isEmpty()) {
            answer.put("foam", state.parts().foam().stream().map(States::foam).toList());
        }
        state.intake().ifPresent(intake -> answer.put("intake", of(intake)));
        return answer;
    }

    private static Map<String, Object> of(Intake intake) {
        Map<String, Object> members = new LinkedHashMap<>();
        members.put("intake_Pa", intake.pressure().pascals());
        members.put("least_Pa", intake.least().pascals());
        members.put("most_m3s", intake.most().cubicMetresPerSecond());
        members.put("shortest", intake.shortest());
        members.put("pumps", intake.pumps().stream().map(States::pump).toList());
        members.put("hoses", intake.hoses().stream().map(States::supply).toList());
        return members;
    }

    private static Map<String, Object> pump(Intake.PumpState pump) {
        Map<String, Object> members =
                named(pump.engine(), "pump_Pa", pump.pump().pascals());
        members.put("intake_Pa", pump.intake().pascals());
        members.put("flow_m3s", pump.flow().cubicMetresPerSecond());
        return members;
    }

    private static Map<String, Object> supply(Piece piece) {
        Map<String, Object> members =
                named(piece.place(), "flow_m3s", piece.flow().cubicMetresPerSecond());
        members.put("after_Pa", piece.after().pascals());
        return members;
    }

    private static Map<String, Object> reduced(LayState.Reduced reduced) {
        Map<String, Object> members =
                named(reduced.name(), "before_Pa", reduced.before().pascals());
        members.put("active", reduced.active());
        return members;
    }

    private static Map<String, Object> foam(FoamState foam) {
        Map<String, Object> members = named(foam.id(), "inlet_Pa", foam.inlet().pascals());
        members.put("back_Pa", foam.back().pascals());
        members.put("flow_m3s", foam.flow().cubicMetresPerSecond());
        members.put("draws", foam.draws());
        return members;
    }

    static Map<String, Object> of(Network network) {
        NetworkState state = NetworkSolver.solve(network);
        Map<String, Object> answer = new LinkedHashMap<>();
        answer.put(
                "nodes",
                network.listNodes().stream()
                        .map(node -> named(node, "head_Pa", state.head_Pa(node)))
                        .toList());
        answer.put(
                "links",
                network.listLinks().stream()
                        .map(link -> named(link, "flow_m3s", state.flow_m3s(link)))
                        .toList());
        return answer;
    }

    private static Map<String, Object> named(String id, String what, double value) {
        Map<String, Object> members = new LinkedHashMap<>();
        members.put("id", id);
        members.put(what, value);
        return members;
    }

    private static Map<String, Object> tip(LayState.AtTip tip) {
        Map<String, Object> members = new LinkedHashMap<>();
        members.put("id", tip.outlet().id());
        members.putAll(members(tip.state()));
        return members;
    }

    private static Map<String, Object> members(LineState state) {
        Map<String, Object> members = new LinkedHashMap<>();
        members.put("pump_Pa", state.pump().pascals());
        members.put("flow_m3s", state.flow().cubicMetresPerSecond());
        members.put("tip_Pa", state.tip().pascals());
        members.put("reaction_N", state.reaction().newtons());
        members.put("hoseLoss_Pa", state.hoseLoss().pascals());
        members.put("pipingLoss_Pa", state.pipingLoss().pascals());
        members.put("applianceLoss_Pa", state.applianceLoss().pascals());
        members.put("rise_Pa", state.rise().pascals());
        return members;
    }
}
