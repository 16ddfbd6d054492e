package org.hosewright.ledger.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.Constants;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;

/** Makes every card of a company from its kit. */
public final class CardAnalysis {
    private final Kit kit;
    private final LocalDate today;
    private final Rounding rounding;
    private final Set<String> assumed = new LinkedHashSet<>();

    private CardAnalysis(Kit kit, LocalDate today, Rounding rounding) {
        this.kit = kit;
        this.today = today;
        this.rounding = rounding;
        this.assumed.add("A floor counts " + QuantityShown.of(kit.units()).text(floor(kit.units()))
                + "; the street floor is " + (kit.units() == UnitSystem.US ? "floor 1." : "the ground floor."));
    }

    /** The cards of a kit; a package that nothing limits gets no figures and is named among what is assumed.
     *
     * @param revision revision code that each sheet bears
     * @param today the day they are made; ages of hose tests are taken at it
     * @param way whether figures are rounded to the nearest step or up
     */
    public static CardSet of(Kit kit, String revision, LocalDate today, Rounding.Way way) {
        CardAnalysis analysis = new CardAnalysis(kit, today, Rounding.of(kit.units(), way));
        List<EngineCard> engines = new ArrayList<>();
        for (EngineRecord engine : kit.engines().values()) {
            List<CardLine> lines = analysis.lines(engine);
            if (!lines.isEmpty()) {
                engines.add(new EngineCard(engine, lines));
            }
        }
        return new CardSet(kit, revision, today, analysis.rounding.step(), engines, List.copyOf(analysis.assumed));
    }

    /** The height of a storey that cards count with. @source common practice: 10 ft; 3 m where metres are used */
    public static Length floor(UnitSystem units) {
        return units == UnitSystem.US ? Length.ofFeet(10) : Length.ofMetres(3);
    }

    private List<CardLine> lines(EngineRecord engine) {
        List<CardLine> lines = new ArrayList<>();
        for (HosePackage named : kit.packages().values()) {
            if (named.engine().equals(engine.engine().id())) {
                addLine(lines, engine, named);
            }
        }
        return lines;
    }

    private void addLine(List<CardLine> lines, EngineRecord engine, HosePackage named) {
        try {
            CardMaking making = CardMaking.of(kit, engine, named, today, rounding);
            lines.add(making.line());
            assumed.addAll(making.assumed());
        } catch (InvalidInput nothingStopsIt) {
            assumed.add("No figures are printed for " + named.id() + ". " + nothingStopsIt.getMessage());
        }
    }

    /** What a floor takes, rounded up to a whole psi or to 5 kPa. */
    public static Pressure floorAdder(UnitSystem units) {
        double floor_Pa = Constants.WATER_PA_PER_M * floor(units).metres();
        Pressure step = units == UnitSystem.US ? Pressure.ofPsi(1) : Pressure.ofKPa(5);
        return new Pressure(Math.ceil(floor_Pa / step.pascals() - 1e-9) * step.pascals());
    }
}
