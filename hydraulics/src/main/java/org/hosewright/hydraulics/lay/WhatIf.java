package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.supply.HydrantCurve;

/** The same lay with one thing changed and nobody touching the pump or the gates, as the panel would then show it.
 *
 * @param says what changed, as it follows "if"
 * @param before the lay as it was asked for
 * @param then the lay with the change
 */
public record WhatIf(String says, LayState before, LayState then) {

    /** One outlet opened if it was shut, shut if it was open. */
    public static WhatIf turned(Lay lay, LayState before, String outlet) {
        boolean opens = before.getTip(outlet).outlet().shut();
        return of(outlet + (opens ? " opens" : " shuts"), lay.turned(outlet), before);
    }

    /** Another nozzle or setting at one outlet. */
    public static WhatIf tip(Lay lay, LayState before, String outlet, Nozzle nozzle, String setting) {
        before.getTip(outlet);
        Lay other = lay.changed(one -> one.id().equals(outlet) ? one.with(nozzle, setting) : one);
        return of(outlet + " changes to " + nozzle.tipName(setting), other, before);
    }

    /** A coupling lets go: of the last hose to an outlet, or of the hose from a discharge or a join. */
    public static WhatIf burst(Lay lay, LayState before, String place, int coupling) {
        Damage burst = new Damage.Burst(coupling);
        HoseOfLay hose = new HoseOfLay(lay, place);
        Lay other = hose.changed(leg -> leg.withDamage(Optional.of(burst)));
        return of("coupling " + coupling + " of the hose " + hose.says() + " lets go", other, before);
    }

    /** A kink in the last hose to an outlet, or in the hose from a discharge or a join. */
    public static WhatIf kinked(Lay lay, LayState before, String place, PointLoss loss) {
        Damage kink = new Damage.Kink(loss);
        HoseOfLay hose = new HoseOfLay(lay, place);
        return of("the hose " + hose.says() + " kinks", hose.changed(leg -> leg.withDamage(Optional.of(kink))), before);
    }

    /** A gate part shut, at the start of the last hose to an outlet, or of the hose from a discharge or a join. */
    public static WhatIf gated(Lay lay, LayState before, String place, PointLoss loss) {
        HoseOfLay hose = new HoseOfLay(lay, place);
        Lay other = hose.changed(leg -> leg.withGate(Optional.of(loss)));
        return of("the gate of the hose " + hose.says() + " is part shut", other, before);
    }

    /** The first hose of what a place names, as {@link #burst} takes it. */
    public static Hose hose(Lay lay, String place) {
        return new HoseOfLay(lay, place).leg().runs().get(0).hose();
    }

    /** Every hydrant gives only a share of the flow that its test showed.
     *
     * @param share above 0, at most 1
     */
    public static WhatIf weakerHydrant(Lay lay, LayState before, Ratio share) {
        Numbers.requireWithin("share of a hydrant's test", 100 * share.value(), 1, 100, "%");
        Supply supply = lay.supply()
                .orElseThrow(() -> new InvalidInput("supply of the lay", "", "a hydrant with its test", ""));
        String percent = Numbers.plain(Numbers.toNearest(100 * share.value(), 0.1));
        return of(
                (hydrants(supply) > 1 ? "each hydrant gives " : "the hydrant gives ") + percent + " % of its test",
                lay.withSupply(Optional.of(weaker(supply, share))),
                before);
    }

    private static int hydrants(Supply supply) {
        int count = 0;
        for (Supply.Feed feed : supply.feeds()) {
            count += feed.source() instanceof Source.Hydrant ? 1 : 0;
            count += feed.source() instanceof Source.Pumper pumper ? hydrants(pumper.supply()) : 0;
        }
        return count;
    }

    private static WhatIf of(String says, Lay other, LayState before) {
        return new WhatIf(says, before, LaySolver.untouched(other, before));
    }

    private static Supply weaker(Supply supply, Ratio share) {
        List<Supply.Feed> feeds = new ArrayList<>();
        for (Supply.Feed feed : supply.feeds()) {
            feeds.add(new Supply.Feed(weaker(feed.source(), share), feed.lines()));
        }
        return new Supply(feeds, supply.keep());
    }

    private static Source weaker(Source source, Ratio share) {
        if (source instanceof Source.Hydrant hydrant) {
            HydrantCurve test = hydrant.curve();
            Flow less = new Flow(share.value() * test.at().cubicMetresPerSecond());
            return new Source.Hydrant(new HydrantCurve(test.still(), test.residual(), less));
        }
        if (source instanceof Source.Pumper pumper) {
            return new Source.Pumper(
                    pumper.engine(), pumper.discharge(), pumper.pump(), weaker(pumper.supply(), share));
        }
        return source;
    }
}
