package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.Opening;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.foam.Proportioner;
import org.hosewright.hydraulics.limit.Crew;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** What a chain of hose ends in. */
public sealed interface End {

    /** The legs that follow, in laying order; none behind an outlet or before a join. */
    default List<Leg> legs() {
        return List.of();
    }

    /** The same piece with other legs behind it, as many as before. */
    default End withLegs(List<Leg> legs) {
        return this;
    }

    /** A nozzle in one setting, or another opening.
     *
     * @param id its name in the lay
     * @param nozzle the nozzle
     * @param setting its setting; empty for the first one listed
     * @param shut true while no water leaves it
     * @param crew the people at it with their reaction figure, where both are known
     */
    record Outlet(String id, Nozzle nozzle, String setting, boolean shut, Optional<Crew> crew) implements End {
        public Outlet {
            nozzle.tip(setting);
        }

        /** Sprinkler heads.
         *
         * @param at1psi flow of one head at 1 psi, which is its K factor
         * @param heads how many open; above 0
         */
        public static Outlet sprinklers(String id, Flow at1psi, int heads, boolean shut) {
            Nozzle nozzle = Nozzle.of("sprinklers", Opening.sprinklers(at1psi, heads));
            return new Outlet(id, nozzle, Nozzle.ONLY, shut, Optional.empty());
        }

        /** The open end of a hose. */
        public static Outlet hoseEnd(String id, Length diameter, Optional<Crew> crew) {
            return new Outlet(id, Nozzle.of("open hose end", Opening.hoseEnd(diameter)), Nozzle.ONLY, false, crew);
        }

        public Tip tip() {
            return nozzle.tip(setting);
        }

        Outlet turned() {
            return new Outlet(id, nozzle, setting, !shut, crew);
        }

        Outlet with(Nozzle other, String otherSetting) {
            return new Outlet(id, other, otherSetting, shut, crew);
        }
    }

    /** A wye or manifold with its legs in order.
     *
     * @param appliance what it loses and bears, where it is named
     * @param legs at least two
     */
    record Wye(Optional<Appliance> appliance, List<Leg> legs) implements End {
        public Wye {
            legs = List.copyOf(legs);
            if (legs.size() < 2) {
                throw new InvalidInput("legs of a wye", String.valueOf(legs.size()), "at least two", "");
            }
        }

        @Override
        public Wye withLegs(List<Leg> others) {
            return new Wye(appliance, others);
        }

        /** The loss at one leg's flow, where it is stated so. */
        Optional<ApplianceLoss> perLeg() {
            return appliance.filter(named -> named.per() == Appliance.Per.LEG).map(Appliance::loss);
        }
    }

    /** The place where this line meets others.
     *
     * @param name of the join; what follows it stands with the lay
     */
    record Join(String name) implements End {}

    /** A monitor with its tips.
     *
     * @param appliance what it loses and bears, where it is named; its loss is taken at the sum of its tips
     * @param rise its tips above the end of the hose, negative below
     * @param tips at least one
     */
    record Monitor(Optional<Appliance> appliance, Length rise, List<Outlet> tips) implements End {
        public Monitor {
            tips = List.copyOf(tips);
            if (tips.isEmpty()) {
                throw new InvalidInput("tips of a monitor", "", "at least one", "");
            }
        }

        @Override
        public List<Leg> legs() {
            return tips.stream().map(tip -> new Leg(List.of(), tip)).toList();
        }

        @Override
        public Monitor withLegs(List<Leg> legs) {
            return new Monitor(
                    appliance,
                    rise,
                    legs.stream().map(leg -> (Outlet) leg.end()).toList());
        }
    }

    /** A standpipe, fed at its connection.
     *
     * @param loss of connection and riser at the sum of its outlets
     * @param rise the foot of the floors above the connection; each floor adds its own
     * @param floors its outlets in use; at least one
     * @param posted the highest pressure that is posted at the connection, where it is known
     */
    record Standpipe(PointLoss loss, Length rise, List<Floor> floors, Optional<Pressure> posted) implements End {
        public Standpipe {
            floors = List.copyOf(floors);
            if (floors.isEmpty()) {
                throw new InvalidInput("outlets of a standpipe", "", "at least one outlet in use", "");
            }
        }

        @Override
        public List<Leg> legs() {
            return floors.stream().map(Floor::leg).toList();
        }

        @Override
        public Standpipe withLegs(List<Leg> legs) {
            List<Floor> changed = new ArrayList<>();
            for (int i = 0; i < floors.size(); i++) {
                Floor floor = floors.get(i);
                changed.add(new Floor(floor.name(), floor.rise(), floor.outlet(), legs.get(i)));
            }
            return new Standpipe(loss, rise, changed, posted);
        }
    }

    /** An outlet of a standpipe in use.
     *
     * @param name of the floor
     * @param rise the outlet above the foot of the floors, negative below
     * @param outlet its kind
     * @param leg what is laid from it
     */
    record Floor(String name, Length rise, FloorOutlet outlet, Leg leg) {}

    /** A pressure reducer in a line.
     *
     * @param id its name in the lay
     * @param holds the most that it lets stand behind it; above 0
     * @param leg what follows
     */
    record Reducer(String id, Pressure holds, Leg leg) implements End {
        public Reducer {
            Numbers.requirePositive("pressure that " + id + " holds", holds.pascals());
        }

        @Override
        public List<Leg> legs() {
            return List.of(leg);
        }

        @Override
        public Reducer withLegs(List<Leg> legs) {
            return new Reducer(id, holds, legs.get(0));
        }
    }

    /** A hose that has parted: water leaves there, and what is left goes on.
     *
     * @param id the burst's name in the lay
     * @param opening the torn end
     * @param leg the hose behind it
     */
    record Parted(String id, Opening opening, Leg leg) implements End {
        @Override
        public List<Leg> legs() {
            return List.of(leg);
        }

        @Override
        public Parted withLegs(List<Leg> legs) {
            return new Parted(id, opening, legs.get(0));
        }
    }

    /** A foam eductor in a line.
     *
     * @param id its name in the lay
     * @param made what it is made for
     * @param leg what follows
     */
    record InlineEductor(String id, Proportioner made, Leg leg) implements End {
        @Override
        public List<Leg> legs() {
            return List.of(leg);
        }

        @Override
        public InlineEductor withLegs(List<Leg> legs) {
            return new InlineEductor(id, made, legs.get(0));
        }
    }
}
