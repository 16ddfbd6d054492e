package org.hosewright.hydraulics.method;

import static org.hosewright.hydraulics.quantity.QuantityText.flow;
import static org.hosewright.hydraulics.quantity.QuantityText.hoseLoss;
import static org.hosewright.hydraulics.quantity.QuantityText.length;
import static org.hosewright.hydraulics.quantity.QuantityText.pressure;
import static org.hosewright.hydraulics.quantity.QuantityText.ratio;
import static org.hosewright.hydraulics.quantity.QuantityText.seconds;
import static org.hosewright.hydraulics.quantity.QuantityText.volume;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.hosewright.hydraulics.demand.DwellingFlow;
import org.hosewright.hydraulics.demand.FireFlow;
import org.hosewright.hydraulics.demand.RuralSupply;
import org.hosewright.hydraulics.demand.SprinklerHead;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.foam.Eductor;
import org.hosewright.hydraulics.foam.FoamMix;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.hosewright.hydraulics.quantity.Volume;
import org.hosewright.hydraulics.stream.StreamReach;
import org.hosewright.hydraulics.supply.Drafting;
import org.hosewright.hydraulics.supply.HydrantClass;
import org.hosewright.hydraulics.supply.MoreLines;
import org.hosewright.hydraulics.supply.Relay;
import org.hosewright.hydraulics.supply.Shuttle;

/** How each rule of the list is worked, in the unit of its printed answer. */
final class Rules {
    private static final Pressure NONE = new Pressure(0);
    private static final Map<String, Function<Example, Object>> ALL = new LinkedHashMap<>();

    static {
        putLosses();
        putPressures();
        putWater();
        putSupply();
    }

    private Rules() {}

    static Object work(Example example) {
        Function<Example, Object> rule = ALL.get(example.rule());
        if (rule == null) {
            throw new IllegalArgumentException("no rule " + example.rule());
        }
        return rule.apply(example);
    }

    private static void putLosses() {
        ALL.put("coefficient", e -> loss(coefficient(e, "loss"), e));
        ALL.put("underwriters", e -> loss(new UnderwritersMethod(), e));
        ALL.put("subtract ten", e -> loss(new SubtractTen(), e));
        ALL.put("condensed 3 1/2 in", e -> loss(SquareMethod.THREE_AND_HALF_INCH, e));
        ALL.put("condensed 4 in", e -> loss(SquareMethod.FOUR_INCH, e));
        ALL.put("condensed 5 in", e -> loss(SquareMethod.FIVE_INCH, e));
        ALL.put("hand 2 1/2 in", e -> loss(HandMethod.TWO_AND_HALF_INCH, e));
        ALL.put("hand 1 3/4 in", e -> loss(HandMethod.ONE_AND_THREE_QUARTER_INCH, e));
        ALL.put(
                "conversion 3 in",
                e -> ConversionMethod.THREE_INCH.of(pressure(e.input("loss"))).psi());
        ALL.put(
                "wye",
                e -> new WyeLoss(
                                coefficient(e, "loss"),
                                length(e.input("length")),
                                coefficient(e, "branch"),
                                length(e.input("branch length")))
                        .loss(2, flow(e.input("flow")))
                        .psi());
        ALL.put(
                "measured coefficient",
                e -> CoefficientMethod.measured(
                                pressure(e.input("near")),
                                pressure(e.input("far")),
                                length(e.input("rise")),
                                length(e.input("length")),
                                flow(e.input("flow")))
                        .loss()
                        .us());
        ALL.put(
                "parallel",
                e -> ParallelLines.of(e.inputs().values().stream()
                                .map(QuantityText::hoseLoss)
                                .map(Known<HoseLoss>::value)
                                .toList())
                        .us());
    }

    private static void putPressures() {
        ALL.put("n method pump", e -> {
            NMethod method = e.input("n").equals("3") ? NMethod.ONE_AND_THREE_QUARTER_INCH : NMethod.TWO_AND_HALF_INCH;
            Pressure friction = method.loss(flow(e.input("flow")), length(e.input("length")));
            return new PumpPressure(pressure(e.input("tip")), friction, NONE, NONE)
                    .sum()
                    .psi();
        });
        ALL.put(
                "column pressure",
                e -> WaterColumn.EXACT.pressure(length(e.input("height"))).psi());
        ALL.put(
                "column height",
                e -> WaterColumn.ofFeetPerPsi(number(e, "feet per psi"))
                        .height(pressure(e.input("pressure")))
                        .feet());
        ALL.put(
                "eductor pump",
                e -> new Eductor(pressure(e.input("inlet")), flow(e.input("flow")))
                        .pump(coefficient(e, "loss").loss(flow(e.input("flow")), length(e.input("length"))))
                        .psi());
        ALL.put(
                "wildland allowance",
                e -> ApplianceAllowance.WILDLAND
                        .of((int) number(e, "appliances"), flow("100 gpm"))
                        .psi());
    }

    private static void putWater() {
        ALL.put(
                "smooth bore",
                e -> new SmoothBore(length(e.input("bore")), pressure(e.input("tip")))
                        .flowAt()
                        .gpm());
        ALL.put(
                "reach across",
                e -> StreamReach.across(length(e.input("bore")), pressure(e.input("tip")))
                        .feet());
        ALL.put(
                "hose water",
                e -> new HoseWater(length(e.input("diameter")))
                        .in(length(e.input("length")))
                        .gallons());
        ALL.put(
                "wildland water 1 1/2 in",
                e -> WildlandVolume.ONE_AND_HALF_INCH
                        .in((int) number(e, "lengths"))
                        .gallons());
        ALL.put("concentrate", e -> mix(e).concentrate(flow(e.input("flow"))).gpm());
        ALL.put("water", e -> mix(e).water(flow(e.input("flow"))).gpm());
        ALL.put(
                "sprinkler",
                e -> new SprinklerHead(number(e, "k"))
                        .flow(pressure(e.input("pressure")))
                        .gpm());
        ALL.put(
                "fire academy",
                e -> FireFlow.nationalFireAcademy(
                                length(e.input("length")), length(e.input("width")), 1, ratio(e.input("share")), 0)
                        .gpm());
        ALL.put("dwelling", e -> DwellingFlow.of(length(e.input("gap"))).gpm());
        ALL.put("rural supply", e -> {
            double volume_m3 = length(e.input("length")).metres()
                    * length(e.input("width")).metres()
                    * length(e.input("height")).metres();
            boolean exposed = e.input("exposed").equals("yes");
            return new RuralSupply((int) number(e, "hazard"), number(e, "construction"), exposed)
                    .least(new Volume(volume_m3))
                    .gallons();
        });
    }

    private static void putSupply() {
        ALL.put("hydrant class", e -> HydrantClass.of(flow(e.input("flow"))).name());
        ALL.put("more lines by percent", e ->
                (double) MoreLines.byPercent(pressure(e.input("still")), pressure(e.input("left"))));
        ALL.put("more lines by first digit", e ->
                (double) MoreLines.byFirstDigit(pressure(e.input("still")), pressure(e.input("left"))));
        ALL.put(
                "shuttle",
                e -> new Shuttle(volume(e.input("tank")))
                        .flow(seconds(e.input("trip")))
                        .gpm());
        ALL.put(
                "relay",
                e -> new Relay(pressure(e.input("pump")), pressure(e.input("keep")))
                        .apart(hoseLoss(e.input("loss")).value(), flow(e.input("flow")))
                        .feet());
        ALL.put(
                "theoretical lift",
                e -> new Drafting(pressure(e.input("air"))).theory().feet());
        ALL.put(
                "working lift",
                e -> new Drafting(pressure(e.input("air"))).working().feet());
    }

    private static CoefficientMethod coefficient(Example e, String name) {
        return new CoefficientMethod(hoseLoss(e.input(name)).value());
    }

    private static double loss(LossMethod method, Example e) {
        return method.loss(flow(e.input("flow")), length(e.input("length"))).psi();
    }

    private static FoamMix mix(Example e) {
        return new FoamMix(ratio(e.input("share")));
    }

    private static double number(Example e, String name) {
        return Double.parseDouble(e.input(name));
    }
}
