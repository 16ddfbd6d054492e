package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;

/** A lay while it flows.
 *
 * @param pump pump pressure at a gauge that taps before the discharge piping
 * @param flow the sum of all discharges
 * @param tips every nozzle in laying order, shut ones too
 * @param gates discharges that are gated down; the others stand open
 * @param parts what happens at each piece
 * @param intake the supply side, where the supply is known
 */
public record LayState(
        Pressure pump, Flow flow, List<AtTip> tips, List<Gate> gates, Parts parts, Optional<Intake> intake) {
    public LayState {
        tips = List.copyOf(tips);
        gates = List.copyOf(gates);
    }

    /** What happens at each piece of a lay.
     *
     * @param flows flow of each discharge, by its id
     * @param pieces from the pump onward in laying order, each once; those behind joins last
     * @param reducers each reducing piece
     * @param foam each eductor
     * @param bursts what is lost at each burst
     * @param posted each standpipe with a posted pressure
     */
    public record Parts(
            Map<String, Flow> flows,
            List<Piece> pieces,
            List<Reduced> reducers,
            List<FoamState> foam,
            List<Lost> bursts,
            List<Posted> posted) {
        public Parts {
            flows = Collections.unmodifiableMap(new LinkedHashMap<>(flows));
            pieces = List.copyOf(pieces);
            reducers = List.copyOf(reducers);
            foam = List.copyOf(foam);
            bursts = List.copyOf(bursts);
            posted = List.copyOf(posted);
        }
    }

    /** A reducing piece.
     *
     * @param name its name
     * @param holds the most that it lets stand behind it
     * @param before pressure before it
     * @param active true where it reduces: pumping harder changes nothing behind it
     * @param feeds the tips behind it
     */
    public record Reduced(String name, Pressure holds, Pressure before, boolean active, List<String> feeds) {
        public Reduced {
            feeds = List.copyOf(feeds);
        }
    }

    /** What leaves a hose where it has parted.
     *
     * @param id of the burst
     * @param flow that leaves there
     * @param feeds the tips behind it
     */
    public record Lost(String id, Flow flow, List<String> feeds) {
        public Lost {
            feeds = List.copyOf(feeds);
        }
    }

    /** A standpipe's connection with the pressure that is posted at it.
     *
     * @param place the line that leads to it
     * @param still the pressure there with every outlet shut and the pump untouched
     * @param most the posted pressure
     */
    public record Posted(String place, Pressure still, Pressure most) {}

    /** One nozzle.
     *
     * @param outlet the nozzle
     * @param path the way from the pump to it as one line, wyes as the ends of their hose
     * @param state the pressures and losses along that way, each at the flow that runs there; a gate's loss counts as
     *     an appliance's
     * @param stations the pressures along the way, the pump's first, the tip's last
     */
    public record AtTip(End.Outlet outlet, Line path, LineState state, List<Station> stations) {
        public AtTip {
            stations = List.copyOf(stations);
        }
    }

    /** A pressure on the way to a tip.
     *
     * @param what the piece that lies before it
     * @param length how much hose that piece is; 0 where it is none
     * @param pressure behind that piece
     * @param flow through that piece
     */
    public record Station(String what, Length length, Pressure pressure, Flow flow) {}

    /** A discharge that is gated down.
     *
     * @param discharge its id
     * @param down the pressure that the gate takes at the flow of its line
     */
    public record Gate(String discharge, Pressure down) {}

    /** The same lay with its supply side. */
    LayState withIntake(Optional<Intake> side) {
        return new LayState(pump, flow, tips, gates, parts, side);
    }

    /** The pump pressure with every outlet shut: a governor holds it, a fixed speed lets it rise to the top of its curve. */
    public Pressure shutPump() {
        return parts.pieces().isEmpty() ? pump : parts.pieces().get(0).still();
    }

    /** What the pump adds to its intake; where the supply is not known, all of its pressure. */
    public Pressure net() {
        double intake_Pa = intake.map(side -> side.pressure().pascals()).orElse(0.0);
        return new Pressure(pump.pascals() - intake_Pa);
    }

    /** Every hose that water runs in by where it lies: "from supply", "from engine-41" on the way to the pump, behind it the
     * tips, discharge or join that it leads to.
     */
    public List<Piece> listHose() {
        List<Piece> hose = new ArrayList<>();
        intake.ifPresent(side -> side.hoses().forEach(piece -> hose.add(piece.in("from " + piece.place()))));
        parts.pieces().stream().filter(piece -> piece.run().isPresent()).forEach(hose::add);
        return List.copyOf(hose);
    }

    /** The open tips. */
    public List<AtTip> open() {
        return tips.stream().filter(tip -> !tip.outlet().shut()).toList();
    }

    /** The tip of a name.
     *
     * @throws InvalidInput there is none
     */
    public AtTip getTip(String id) {
        return tips.stream()
                .filter(tip -> tip.outlet().id().equals(id))
                .findFirst()
                .orElseThrow(() -> new InvalidInput("tip", id, "a tip of the lay", ""));
    }
}
