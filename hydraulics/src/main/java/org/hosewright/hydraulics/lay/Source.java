package org.hosewright.hydraulics.lay;

import java.util.Optional;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Temperature;
import org.hosewright.hydraulics.quantity.Volume;
import org.hosewright.hydraulics.supply.HydrantCurve;

/** Where the water of an intake comes from. */
public sealed interface Source {

    /** A hydrant, by its flow test. */
    record Hydrant(HydrantCurve curve) implements Source {}

    /** The engine's own tank.
     *
     * @param level what is in it
     * @param loss of the piping from tank to pump
     * @param most the most that this piping lets through, where it is known
     */
    record Tank(Volume level, PointLoss loss, Optional<Flow> most) implements Source {
        public Tank {
            Numbers.requirePositive("water in the tank", level.cubicMetres());
        }
    }

    /** Open water below the pump.
     *
     * @param lift the pump above the water
     * @param strainer loss of strainer and entry
     * @param altitude of the place above the sea
     * @param water temperature of the water
     */
    record Draft(Length lift, PointLoss strainer, Length altitude, Temperature water) implements Source {}

    /** Another engine that pumps into this line.
     *
     * @param engine the engine
     * @param discharge the outlet in use
     * @param pump its pump pressure; where nobody set one, what leaves the next intake its least pressure
     * @param supply what feeds it
     */
    record Pumper(Engine engine, Discharge discharge, Optional<Pressure> pump, Supply supply) implements Source {}
}
