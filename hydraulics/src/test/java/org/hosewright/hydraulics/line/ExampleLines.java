package org.hosewright.hydraulics.line;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Discharge;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Nozzle;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Tip;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.PointLoss;
import org.hosewright.hydraulics.quantity.Pressure;

/** Lines of the two invented companies of the examples. */
public final class ExampleLines {
    public static final Hose ATTACK = hose("attack-175", Length.ofInches(1.75), 9.19, 300);
    public static final Hose LEADER = hose("leader-3", Length.ofInches(3), 0.75, 300);
    public static final Nozzle SEVEN_EIGHTHS =
            Nozzle.of("seven-eighths", new SmoothBore(Length.ofInches(0.875), Pressure.ofPsi(50)));
    public static final Nozzle FOG = Nozzle.of("fog-150", new Fog(Flow.ofGpm(150), Pressure.ofPsi(75)));
    public static final Nozzle AUTOMATIC =
            Nozzle.of("auto-100", new Automatic(Pressure.ofPsi(100), Flow.ofGpm(60), Flow.ofGpm(200)));
    public static final Discharge CROSSLAY = discharge("crosslay-1", PointLoss.ofUs(2.06));
    public static final Discharge REAR = discharge("rear-3", PointLoss.ofUs(0.60));
    public static final Appliance WYE = new Appliance(
            "gated-wye",
            new ApplianceLoss.Quadratic(Known.of(PointLoss.ofUs(0.55))),
            Appliance.Per.LEG,
            Optional.empty());

    public static final Hose DELIVERY_45 = new Hose(
            "delivery-45",
            Length.ofMillimetres(45),
            Length.ofMetres(25),
            Known.of(HoseLoss.ofSi(14.5)),
            Optional.of(Pressure.ofKPa(2000)));
    public static final Hose DELIVERY_70 = new Hose(
            "delivery-70",
            Length.ofMillimetres(70),
            Length.ofMetres(25),
            Known.of(HoseLoss.ofSi(1.6)),
            Optional.of(Pressure.ofKPa(2000)));
    public static final Nozzle TIP_19 =
            Nozzle.of("tip-19", new SmoothBore(Length.ofMillimetres(19), Pressure.ofKPa(350)));
    public static final Discharge LEFT = discharge("left-1", PointLoss.ofSi(0.7));

    private ExampleLines() {}

    /** Attack hose from the crosslay to the 7/8 in tip. */
    public static Line crosslay(double length_ft, double rise_ft) {
        return crosslay(ATTACK, CROSSLAY, SEVEN_EIGHTHS, length_ft, rise_ft);
    }

    public static Line crosslay(Hose hose, Discharge discharge, Nozzle nozzle, double length_ft, double rise_ft) {
        Run run = new Run(hose, Length.ofFeet(length_ft), Length.ofFeet(rise_ft));
        return new Line(discharge, List.of(run), nozzle, "");
    }

    /** The attack hose and the piping with the errors and the correlation of a test night. */
    public static Line measured(double length_ft, double rise_ft) {
        Hose hose = withError(ATTACK, 0.21);
        return crosslay(hose, discharge("crosslay-1", 2.06, 1.0), SEVEN_EIGHTHS, length_ft, rise_ft);
    }

    public static LossErrors measuredErrors() {
        return new LossErrors(Map.of("attack-175/crosslay-1", -0.8));
    }

    /** 45 mm hose from the left delivery to the 19 mm tip. */
    public static Line delivery(double length_m, double rise_m) {
        Run run = new Run(DELIVERY_45, Length.ofMetres(length_m), Length.ofMetres(rise_m));
        return new Line(LEFT, List.of(run), TIP_19, "");
    }

    /** Leader hose, gated wye and one open leg, the other one shut. */
    public static Line gardenCourt() {
        Run leader = new Run(LEADER, Length.ofFeet(400), Length.ofFeet(0), Optional.of(WYE));
        Run leg = new Run(ATTACK, Length.ofFeet(200), Length.ofFeet(20));
        return new Line(REAR, List.of(leader, leg), SEVEN_EIGHTHS, "");
    }

    public static Hose withError(Hose hose, double error) {
        Known<HoseLoss> loss = Known.of(hose.loss().value(), HoseLoss.ofUs(error));
        return new Hose(hose.id(), hose.diameter(), hose.section(), loss, hose.serviceTest());
    }

    public static Discharge discharge(String id, double loss, double error) {
        return new Discharge(id, Optional.empty(), Optional.of(Known.of(PointLoss.ofUs(loss), PointLoss.ofUs(error))));
    }

    public static Nozzle nozzle(String id, Tip tip, Optional<Pressure> most) {
        return new Nozzle(id, Map.of("", tip), most, Optional.empty());
    }

    private static Hose hose(String id, Length diameter, double loss, double test_psi) {
        return new Hose(
                id, diameter, Length.ofFeet(50), Known.of(HoseLoss.ofUs(loss)), Optional.of(Pressure.ofPsi(test_psi)));
    }

    private static Discharge discharge(String id, PointLoss loss) {
        return new Discharge(id, Optional.empty(), Optional.of(Known.of(loss)));
    }
}
