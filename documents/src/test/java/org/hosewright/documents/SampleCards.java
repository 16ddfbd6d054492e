package org.hosewright.documents;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineSolver;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.line.LossErrors;
import org.hosewright.hydraulics.order.OrderedCheck;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.card.CardEntry;
import org.hosewright.ledger.card.CardLine;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.card.EngineCard;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.EngineRecord;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NozzleRecord;
import org.hosewright.ledger.line.KitBounds;
import org.hosewright.ledger.line.KitLines;

/** The invented companies' cards, solved here for each length and rounded. */
final class SampleCards {
    private SampleCards() {}

    static CardSet brindleFalls() {
        Kit kit = brindleFallsKit();
        return set(kit, Pressure.ofPsi(5), Length.ofFeet(50), Length.ofFeet(10));
    }

    static CardSet aldwickVale() {
        return set(aldwickValeKit(), Pressure.ofKPa(50), Length.ofMetres(25), Length.ofMetres(3));
    }

    static Kit brindleFallsKit() {
        Hose attack = new Hose(
                "attack-175",
                Length.ofInches(1.75),
                Length.ofFeet(50),
                Known.of(HoseLoss.ofUs(9.25), HoseLoss.ofUs(0.12)),
                Optional.of(Pressure.ofPsi(300)));
        Hose big = new Hose(
                "attack-250",
                Length.ofInches(2.5),
                Length.ofFeet(50),
                Known.of(HoseLoss.ofUs(1.6), HoseLoss.ofUs(0.1)),
                Optional.of(Pressure.ofPsi(300)));
        Nozzle seven = Nozzle.of("seven-eighths", new SmoothBore(Length.ofInches(0.875), Pressure.ofPsi(50)));
        Nozzle nine = Nozzle.of("fifteen-sixteenths", new SmoothBore(Length.ofInches(15.0 / 16), Pressure.ofPsi(50)));
        Nozzle fog = Nozzle.of("fog-150", new Fog(Flow.ofGpm(150), Pressure.ofPsi(75)));
        Map<String, Discharge> discharges = new LinkedHashMap<>();
        for (String id : List.of("crosslay-1", "crosslay-2", "rear-1")) {
            discharges.put(
                    id,
                    new Discharge(
                            id,
                            Optional.of(Length.ofInches(2)),
                            Optional.of(Known.of(PointLoss.ofUs(1.7), PointLoss.ofUs(0.7)))));
        }
        Engine engine = new Engine(
                "engine-41",
                Optional.of(Flow.ofGpm(1500)),
                Optional.of(Pressure.ofPsi(250)),
                Optional.empty(),
                discharges);
        return kit(
                "Brindle Falls Fire Company",
                UnitSystem.US,
                Map.of(2, new Force(75 * 4.4482216), 1, new Force(60 * 4.4482216)),
                List.of(attack, big),
                List.of(seven, fog, nine),
                engine,
                List.of(
                        pack(
                                "crosslay-1-200",
                                engine,
                                "crosslay-1",
                                "attack-175",
                                Length.ofFeet(200),
                                "seven-eighths",
                                Flow.ofGpm(150)),
                        pack(
                                "crosslay-2-250",
                                engine,
                                "crosslay-2",
                                "attack-175",
                                Length.ofFeet(250),
                                "fog-150",
                                Flow.ofGpm(150)),
                        pack(
                                "rear-1-400",
                                engine,
                                "rear-1",
                                "attack-250",
                                Length.ofFeet(400),
                                "fifteen-sixteenths",
                                Flow.ofGpm(175))));
    }

    private static Kit aldwickValeKit() {
        Hose hose = new Hose(
                "delivery-45",
                Length.ofMillimetres(45),
                Length.ofMetres(25),
                Known.of(HoseLoss.ofSi(14.5)),
                Optional.of(Pressure.ofKPa(2000)));
        Nozzle tip = Nozzle.of("tip-19", new SmoothBore(Length.ofMillimetres(19), Pressure.ofKPa(350)));
        Discharge left = new Discharge(
                "left-1", Optional.of(Length.ofMillimetres(70)), Optional.of(Known.of(PointLoss.ofSi(0.7))));
        Engine engine = new Engine(
                "pump-1",
                Optional.of(Flow.ofLitresPerMinute(3000)),
                Optional.of(Pressure.ofKPa(1000)),
                Optional.empty(),
                Map.of("left-1", left));
        return kit(
                "Aldwick Vale Brigade",
                UnitSystem.SI,
                Map.of(),
                List.of(hose),
                List.of(tip),
                engine,
                List.of(pack(
                        "delivery-75",
                        engine,
                        "left-1",
                        "delivery-45",
                        Length.ofMetres(75),
                        "tip-19",
                        Flow.ofLitresPerMinute(400))));
    }

    private static HosePackage pack(
            String id, Engine engine, String discharge, String hose, Length length, String nozzle, Flow least) {
        return new HosePackage(
                id,
                engine.id(),
                discharge,
                List.of(new Stretch(hose, length)),
                nozzle,
                Nozzle.ONLY,
                OptionalInt.of(2),
                Optional.empty(),
                Optional.of(least),
                Optional.empty());
    }

    private static Kit kit(
            String company,
            UnitSystem units,
            Map<Integer, Force> crew,
            List<Hose> hoses,
            List<Nozzle> nozzles,
            Engine engine,
            List<HosePackage> packs) {
        Map<String, HoseRecord> hoseRecords = new LinkedHashMap<>();
        hoses.forEach(h -> hoseRecords.put(
                h.id(),
                new HoseRecord(
                        h,
                        new Basis(Basis.Kind.TEST, "drill-night"),
                        Optional.of(LocalDate.of(2026, 4, 11)),
                        OptionalInt.of(2019))));
        Map<String, NozzleRecord> nozzleRecords = new LinkedHashMap<>();
        nozzles.forEach(n -> nozzleRecords.put(n.id(), new NozzleRecord(n, Optional.empty())));
        Map<String, HosePackage> packages = new LinkedHashMap<>();
        packs.forEach(p -> packages.put(p.id(), p));
        return new Kit(
                company,
                "America/New_York",
                units,
                crew,
                hoseRecords,
                nozzleRecords,
                Map.of(),
                Map.of(engine.id(), new EngineRecord(engine, Map.of(), Optional.of("gauge-a"))),
                Map.of(),
                packages,
                Optional.empty(),
                Map.of());
    }

    private static CardSet set(Kit kit, Pressure step, Length section, Length floor) {
        List<CardLine> lines = new ArrayList<>();
        kit.packages().values().forEach(p -> lines.add(line(kit, p, step, section, floor)));
        EngineRecord engine = kit.engines().values().iterator().next();
        return new CardSet(
                kit,
                "7c1f-09ae",
                LocalDate.of(2026, 5, 14),
                step,
                List.of(new EngineCard(engine, lines)),
                List.of(
                        "The fall of pressure with height is taken as "
                                + (kit.units() == UnitSystem.US ? "0.434 psi per ft." : "9.817 kPa per m."),
                        "No error of the piping of rear 1 is stated: it is taken as none."));
    }

    private static CardLine line(Kit kit, HosePackage pack, Pressure step, Length section, Length floor) {
        Line line = KitLines.of(kit, pack, new Length(0));
        List<CardEntry> entries = new ArrayList<>();
        double ceiling =
                kit.engines().get(pack.engine()).engine().ceiling().get().pascals();
        for (int i = 0; i < 14; i++) {
            Line longer = line.withLastLength(new Length(line.length().metres() + i * section.metres()));
            LineState needed = LineSolver.atTip(longer, line.tip().at());
            if (needed.pump().pascals() > ceiling) {
                break;
            }
            entries.add(entry(kit, pack, longer, needed, step, i));
        }
        QuantityShown shown = QuantityShown.of(kit.units());
        String night = "night of 12 May 2026, 8 readings, tested to "
                + shown.text(kit.units() == UnitSystem.US ? Length.ofFeet(550) : Length.ofMetres(150));
        return new CardLine(
                pack,
                shown.size(line.last().hose().diameter()) + " "
                        + line.last().hose().id().replace('-', ' '),
                line.nozzle().id().replace('-', ' ') + ", "
                        + shown.text(line.tip().at()) + " at the tip",
                "gauge a, the panel gauge before the piping",
                night,
                entries,
                step,
                floor,
                entries.get(entries.size() - 1).length(),
                "the company's ceiling of " + shown.text(new Pressure(ceiling)),
                List.of("Laid straight, no kinks."));
    }

    private static CardEntry entry(Kit kit, HosePackage pack, Line line, LineState needed, Pressure step, int i) {
        OrderedCheck check = OrderedCheck.rounded(
                line,
                LossErrors.UNCORRELATED,
                KitBounds.of(kit, pack, Optional.of(LocalDate.of(2026, 5, 14))),
                needed.pump(),
                Rounding.of(kit.units(), Rounding.Way.NEAREST));
        return new CardEntry(line.length(), line.sections(), check.ordered(), i < 8, check);
    }
}
