package org.hosewright.hydraulics.lay;

import java.util.Optional;
import org.hosewright.hydraulics.foam.Proportioner;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Seconds;

/** A foam eductor while water runs through it.
 *
 * @param id its name in the lay
 * @param made what it is made for
 * @param inlet pressure at its inlet
 * @param back pressure behind it
 * @param mostBack the most that may stand behind it at that inlet pressure
 * @param flow of solution
 * @param nozzles what the open nozzles behind it flow at the pressure they are meant for
 */
public record FoamState(
        String id, Proportioner made, Pressure inlet, Pressure back, Pressure mostBack, Flow flow, Flow nozzles) {
    /** How near the most counts as on it [1]. */
    private static final double ON_IT = 1e-9;

    static FoamState of(End.InlineEductor eductor, Pressure inlet, Pressure back, Flow flow) {
        double nozzles = 0;
        for (End.Outlet outlet : eductor.leg().outlets()) {
            nozzles += outlet.shut() ? 0 : outlet.tip().flowAt().cubicMetresPerSecond();
        }
        return new FoamState(
                eductor.id(),
                eductor.made(),
                inlet,
                back,
                new Pressure(eductor.made().mostBack_Pa(inlet.pascals())),
                flow,
                new Flow(nozzles));
    }

    /** True while it draws concentrate: water runs and the back pressure leaves room. */
    public boolean draws() {
        return flow.cubicMetresPerSecond() > 0 && back.pascals() < mostBack.pascals() * (1 - ON_IT);
    }

    /** True where the nozzles behind it are made for its flow. */
    public boolean matches() {
        return made.rated().matches(nozzles);
    }

    /** The concentrate that it draws. */
    public Flow concentrate() {
        return draws() ? made.draws().concentrate(flow) : new Flow(0);
    }

    /** How long the concentrate lasts, where it is known and drawn. */
    public Optional<Seconds> lasts() {
        return draws() ? made.lasts(flow) : Optional.empty();
    }
}
