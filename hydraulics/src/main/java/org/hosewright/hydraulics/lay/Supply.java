package org.hosewright.hydraulics.lay;

import java.util.ArrayList;
import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.line.Run;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Pressure;

/** What feeds an engine.
 *
 * @param feeds each source with the hose from it; not empty
 * @param keep the least pressure to keep at the intake
 */
public record Supply(List<Feed> feeds, Pressure keep) {
    public Supply {
        feeds = List.copyOf(feeds);
        if (feeds.isEmpty()) {
            throw new InvalidInput("supply of an engine", "", "at least one source", "");
        }
        Numbers.requireNotNegative("pressure to keep at the intake", keep.pascals());
    }

    /** One source with the lines from it.
     *
     * @param source where the water comes from
     * @param lines hose laid side by side from it; not empty
     */
    public record Feed(Source source, List<SupplyHose> lines) {
        public Feed {
            lines = List.copyOf(lines);
            if (lines.isEmpty()) {
                throw new InvalidInput("lines of a supply", "", "at least one line, be it of no hose", "");
            }
        }
    }

    /** One line from a source to the pump.
     *
     * @param runs hose in laying order with its rise; empty where the pump stands at its source
     */
    public record SupplyHose(List<Run> runs) {
        public SupplyHose {
            runs = List.copyOf(runs);
        }
    }

    /** Refuses an engine that pumps to itself, over however many others.
     *
     * @param engine id of the engine that is fed
     */
    public void requireNoLoop(String engine) {
        requireNoLoop(List.of(engine));
    }

    private void requireNoLoop(List<String> downstream) {
        for (Feed feed : feeds) {
            if (feed.source() instanceof Source.Pumper pumper) {
                String id = pumper.engine().id();
                if (downstream.contains(id)) {
                    throw new InvalidInput("engine of a relay", id, "each engine once: it cannot pump to itself", "");
                }
                List<String> more = new ArrayList<>(downstream);
                more.add(id);
                pumper.supply().requireNoLoop(more);
            }
        }
    }
}
