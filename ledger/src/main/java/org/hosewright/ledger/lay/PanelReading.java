package org.hosewright.ledger.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.lay.Intake;
import org.hosewright.hydraulics.lay.LayState;
import org.hosewright.hydraulics.lay.Piece;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.ledger.card.PanelGauge;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** What a gauge at the panel shows.
 *
 * @param gauge where it taps, with its name where the kit gives one
 * @param pressure what it shows
 * @param flow what runs there; absent where the panel does not tell
 */
public record PanelReading(String gauge, Pressure pressure, Optional<Flow> flow) {

    /** The pump's gauge, the intake's, one behind the piping and gate of each discharge, then those of a relay. */
    static List<PanelReading> listOf(Kit kit, EngineRecord engine, LayState lay) {
        PanelGauge panel = PanelGauge.of(kit, engine);
        List<PanelReading> all = new ArrayList<>();
        if (panel.sight().atDischarge()) {
            all.add(new PanelReading("pump", lay.pump(), Optional.of(lay.flow())));
        } else {
            String name = panel.name().isEmpty() ? "pump" : "pump, " + panel.name();
            all.add(new PanelReading(name, plus(lay.pump(), panel.sight().offset()), Optional.of(lay.flow())));
        }
        lay.intake()
                .map(Intake::pressure)
                .ifPresent(intake -> all.add(new PanelReading("intake", intake, Optional.empty())));
        behind(lay).forEach((discharge, pressure) -> {
            boolean named = panel.sight().atDischarge() && !panel.name().isEmpty();
            Pressure shown =
                    panel.sight().atDischarge() ? plus(pressure, panel.sight().offset()) : pressure;
            all.add(new PanelReading(
                    discharge + (named ? ", " + panel.name() : ""),
                    shown,
                    Optional.ofNullable(lay.parts().flows().get(discharge))));
        });
        lay.intake().map(Intake::pumps).orElse(List.of()).forEach(pump -> addRelay(all, kit, pump));
        return List.copyOf(all);
    }

    /** The panel of an engine that pumps to this one. */
    private static void addRelay(List<PanelReading> all, Kit kit, Intake.PumpState pump) {
        String engine = pump.engine();
        PanelGauge panel = PanelGauge.of(kit, KitLines.get(kit.engines(), engine, "engine of the relay"));
        boolean own = !panel.sight().atDischarge() && !panel.name().isEmpty();
        Pressure shown = panel.sight().atDischarge()
                ? pump.pump()
                : plus(pump.pump(), panel.sight().offset());
        all.add(new PanelReading(engine + " pump" + (own ? ", " + panel.name() : ""), shown, Optional.of(pump.flow())));
        all.add(new PanelReading(engine + " intake", pump.intake(), Optional.empty()));
    }

    private static Map<String, Pressure> behind(LayState lay) {
        Map<String, Pressure> behind = new LinkedHashMap<>();
        for (String discharge : lay.parts().flows().keySet()) {
            for (Piece piece : lay.parts().pieces()) {
                boolean own = piece.what().equals(discharge + " piping")
                        || piece.what().equals(discharge + " gate");
                if (own) {
                    behind.put(discharge, piece.after());
                }
            }
        }
        return behind;
    }

    private static Pressure plus(Pressure real, Pressure offset) {
        return new Pressure(real.pascals() + offset.pascals());
    }
}
