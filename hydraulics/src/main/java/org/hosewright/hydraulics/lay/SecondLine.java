package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.hosewright.hydraulics.lay.LayState.AtTip;

/** What happens where lines hang together when one outlet opens or shuts and nobody touches the pump.
 *
 * <p>Lines hang together behind a wye, a manifold or a siamese, and on one standpipe; where the pump keeps its speed
 * instead of a pressure, all lines of the lay do.
 *
 * @param turned the outlet
 * @param opens true where it opens, false where it shuts
 * @param lay the whole lay then
 * @param tips the open tips that hang together with it then; empty where none is left
 */
public record SecondLine(String turned, boolean opens, LayState lay, List<AtTip> tips) {
    public SecondLine {
        tips = List.copyOf(tips);
    }

    /** Each outlet that others hang together with, turned on its own, and each shut one, since its water counts too. */
    public static List<SecondLine> listOf(Lay lay, LayState state) {
        List<SecondLine> all = new ArrayList<>();
        for (LineGroup group : together(lay)) {
            List<End.Outlet> outlets = group.outlets();
            Set<String> ids = outlets.stream().map(End.Outlet::id).collect(Collectors.toSet());
            boolean several = group.places() > 1 && outlets.stream().anyMatch(one -> !one.shut());
            for (End.Outlet outlet : outlets) {
                if ((several || outlet.shut()) && Reducers.isKnown(lay.turned(outlet.id()))) {
                    all.add(of(lay, state, outlet, ids));
                }
            }
        }
        return all;
    }

    /** The shut outlets of which nobody can say what they would get, since their kind is not known. */
    public static List<String> listUnknown(Lay lay) {
        return lay.outlets().stream()
                .filter(End.Outlet::shut)
                .map(End.Outlet::id)
                .filter(id -> !Reducers.isKnown(lay.turned(id)))
                .toList();
    }

    private static SecondLine of(Lay lay, LayState state, End.Outlet outlet, Set<String> ids) {
        LayState then = LaySolver.turned(lay, state, outlet.id());
        List<AtTip> tips = then.open().stream()
                .filter(tip -> ids.contains(tip.outlet().id()))
                .toList();
        return new SecondLine(outlet.id(), outlet.shut(), then, tips);
    }

    private static List<LineGroup> together(Lay lay) {
        return lay.pump() instanceof PumpMode.FixedSpeed
                ? List.of(new LineGroup(lay.lines(), lay.joins()))
                : LineGroup.listOf(lay);
    }
}
