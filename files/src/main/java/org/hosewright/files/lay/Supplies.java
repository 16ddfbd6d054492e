package org.hosewright.files.lay;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Engine;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.lay.Source;
import org.hosewright.hydraulics.lay.Supply;
import org.hosewright.hydraulics.lay.Supply.Feed;
import org.hosewright.hydraulics.lay.Supply.SupplyHose;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.hydraulics.quantity.Temperature;
import org.hosewright.hydraulics.quantity.Unit;
import org.hosewright.hydraulics.supply.HydrantCurve;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** What feeds an engine, made from what the file says. */
final class Supplies {
    /** What is kept at an intake where nobody stated more. @source common practice: 20 psi */
    private static final Pressure USUAL_KEEP = Pressure.ofPsi(20);

    private static final Temperature USUAL_WATER = Temperature.of(68, Unit.F);

    private final Kit kit;
    private final List<String> assumed;
    private final List<String> cautions = new ArrayList<>();
    private final List<LocalDate> tests = new ArrayList<>();

    Supplies(Kit kit, List<String> assumed) {
        this.kit = kit;
        this.assumed = assumed;
    }

    /** What people should know about the sources, as sentences. */
    List<String> cautions() {
        return cautions;
    }

    /** The days of the hydrants' tests, as far as they are stated. */
    List<LocalDate> tests() {
        return tests;
    }

    /** The supply; empty where only its hose is stated. */
    Optional<Supply> of(LaidSource laid) {
        if (laid.lines().isEmpty() && laid.from().isEmpty()) {
            cautions.add("No hydrant test is stated: nothing here says whether the supply gives this flow.");
            return Optional.empty();
        }
        if (laid.keep().isEmpty() && isUnderPressure(laid)) {
            assumed.add("No lowest intake pressure is stated: "
                    + QuantityShown.of(kit.units()).text(USUAL_KEEP) + " is kept.");
        }
        Pressure keep = laid.keep().orElse(USUAL_KEEP);
        if (laid.lines().isEmpty()) {
            return Optional.of(new Supply(List.of(relayed(laid, keep, "")), keep));
        }
        List<Feed> feeds = new ArrayList<>();
        for (LaidSource line : laid.lines()) {
            feeds.add(relayed(line, keep, " of supply line " + (feeds.size() + 1)));
        }
        return Optional.of(new Supply(feeds, keep));
    }

    /** True where some intake of the supply has a least pressure; lifted water has what the air gives. */
    private static boolean isUnderPressure(LaidSource laid) {
        return !laid.relay().isEmpty()
                || laid.from().filter(LaidSource.Hydrant.class::isInstance).isPresent()
                || laid.lines().stream().anyMatch(Supplies::isUnderPressure);
    }

    /** Engines in line: each feeds the next, the source the first.
     *
     * @param which which of several supply lines it is, as a phrase; empty where it is the only one
     */
    private Feed relayed(LaidSource laid, Pressure keep, String which) {
        Feed feed = feed(laid, which);
        for (LaidSource.Pumper pumper : laid.relay()) {
            Engine engine = KitLines.get(kit.engines(), pumper.engine(), "engine of the relay")
                    .engine();
            Supply supply = new Supply(List.of(feed), keep);
            Source source = new Source.Pumper(engine, engine.getDischarge(pumper.discharge()), pumper.pump(), supply);
            feed = feed(source, pumper.hose(), pumper.rise(), pumper.engine());
        }
        return feed;
    }

    private Feed feed(LaidSource laid, String which) {
        LaidSource.From from = laid.from()
                .orElseThrow(() -> new InvalidInput(
                        "source of a supply line", "", "one of hydrant, tank and draft", laid.where()));
        if (from instanceof LaidSource.Hydrant test) {
            return feed(hydrant(test, which), laid.hose(), laid.rise(), "the hydrant" + which);
        }
        if (from instanceof LaidSource.Tank tank) {
            if (tank.loss().isEmpty() && !which.isEmpty()) {
                throw new InvalidInput(
                        "loss from the tank to the pump" + which,
                        "",
                        "a loss, as in loss: 10 psi @ 500 gpm, since it is not the only line into that intake",
                        laid.where());
            }
            if (tank.loss().isEmpty()) {
                assumed.add("The loss from the tank to the pump is not known: none is taken.");
            }
            Source source = new Source.Tank(tank.level(), tank.loss().orElse(PointLoss.NONE), tank.most());
            return new Feed(source, List.of(new SupplyHose(List.of())));
        }
        return draft((LaidSource.Draft) from);
    }

    private Source hydrant(LaidSource.Hydrant test, String which) {
        HydrantCurve curve = new HydrantCurve(test.still(), test.residual(), test.at());
        test.tested().ifPresent(tests::add);
        cautions.add(test.tested()
                .map(day -> "The hydrant" + which + " was tested on " + day + ": it may give less today.")
                .orElse("The day of the hydrant's test" + which + " is not known: it may give less today."));
        if (curve.isWeakTest()) {
            cautions.add("The hydrant's test" + which
                    + " drew its pressure down by less than a tenth: what it gives beyond is a guess.");
        }
        return new Source.Hydrant(curve);
    }

    private Feed draft(LaidSource.Draft draft) {
        if (draft.altitude().isEmpty()) {
            assumed.add("The height above the sea is not stated: the sea's is taken.");
        }
        if (draft.temperature().isEmpty()) {
            assumed.add("The water's temperature is not stated: "
                    + QuantityShown.of(kit.units()).text(USUAL_WATER) + " is taken.");
        }
        if (draft.strainer().isEmpty()) {
            assumed.add("The loss of the strainer is not stated: none is taken.");
        }
        Source source = new Source.Draft(
                draft.lift(),
                draft.strainer().orElse(PointLoss.NONE),
                draft.altitude().orElse(new Length(0)),
                draft.temperature().orElse(USUAL_WATER));
        return new Feed(source, List.of(new SupplyHose(KitLines.runs(kit, draft.hose(), new Length(0)))));
    }

    private Feed feed(Source source, List<Stretch> hose, Optional<Length> rise, String from) {
        if (rise.isEmpty()) {
            assumed.add("No rise is stated from " + from + ": the pump is taken level with it.");
        }
        return new Feed(source, List.of(new SupplyHose(KitLines.runs(kit, hose, rise.orElse(new Length(0))))));
    }
}
