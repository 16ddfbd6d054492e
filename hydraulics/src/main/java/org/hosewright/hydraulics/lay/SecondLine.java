package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.hosewright.hydraulics.lay.Lay.FromDischarge;
import org.hosewright.hydraulics.lay.LayState.AtTip;

/** What happens on a wye when one of its nozzles opens or shuts and nobody touches the pump.
 *
 * @param turned the nozzle
 * @param opens true where it opens, false where it shuts
 * @param lay the whole lay then
 * @param tips the open tips of that line then; empty where none is left
 */
public record SecondLine(String turned, boolean opens, LayState lay, List<AtTip> tips) {
    public SecondLine {
        tips = List.copyOf(tips);
    }

    /** Each nozzle of each line that branches, turned on its own. */
    public static List<SecondLine> listOf(Lay lay, LayState state) {
        List<SecondLine> all = new ArrayList<>();
        for (FromDischarge line : lay.lines()) {
            if (!(line.leg().end() instanceof End.Wye) || !line.leg().isOpen()) {
                continue;
            }
            var ids = line.leg().outlets().stream().map(End.Outlet::id).collect(Collectors.toSet());
            for (End.Outlet outlet : line.leg().outlets()) {
                LayState then = LaySolver.turned(lay, state, outlet.id());
                List<AtTip> tips = then.open().stream()
                        .filter(tip -> ids.contains(tip.outlet().id()))
                        .toList();
                all.add(new SecondLine(outlet.id(), outlet.shut(), then, tips));
            }
        }
        return all;
    }
}
