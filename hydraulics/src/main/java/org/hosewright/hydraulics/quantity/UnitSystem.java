package org.hosewright.hydraulics.quantity;

/** The units in which a company wants its results shown. */
public enum UnitSystem {
    US("us", Unit.PSI, Unit.GPM, Unit.FT, Unit.LBF),
    SI("si", Unit.KPA, Unit.L_MIN, Unit.M, Unit.N);

    private final String word;
    private final Unit pressure;
    private final Unit flow;
    private final Unit length;
    private final Unit force;

    UnitSystem(String word, Unit pressure, Unit flow, Unit length, Unit force) {
        this.word = word;
        this.pressure = pressure;
        this.flow = flow;
        this.length = length;
        this.force = force;
    }

    /** The word in a kit file. */
    public String word() {
        return word;
    }

    public Unit pressure() {
        return pressure;
    }

    public Unit flow() {
        return flow;
    }

    public Unit length() {
        return length;
    }

    public Unit force() {
        return force;
    }

    /** How a hose's loss is named in results. */
    public String hoseLossUnit() {
        return this == US ? "psi/100ft@100gpm" : "kPa/100m@100L/min";
    }

    /** How the loss of piping or an appliance is named in results. */
    public String pointLossUnit() {
        return this == US ? "psi@100gpm" : "kPa@100L/min";
    }

    /** The value of a quantity in this system's unit. */
    public double show(Quantity quantity) {
        if (quantity instanceof HoseLoss loss) {
            return this == US ? loss.us() : loss.metric();
        }
        if (quantity instanceof PointLoss loss) {
            return this == US ? loss.us() : loss.metric();
        }
        return quantity instanceof Ratio ratio ? ratio.value() : unit(quantity).ofSi(quantity.si());
    }

    /** The name of the unit that {@link #show} uses; "1" for a ratio. */
    public String unitOf(Quantity quantity) {
        if (quantity instanceof HoseLoss) {
            return hoseLossUnit();
        }
        if (quantity instanceof PointLoss) {
            return pointLossUnit();
        }
        return quantity instanceof Ratio ? "1" : unit(quantity).symbol();
    }

    /** This system's unit of a plain quantity; the per cent of a ratio. */
    Unit unit(Quantity quantity) {
        if (quantity instanceof Pressure) {
            return pressure;
        }
        if (quantity instanceof Flow) {
            return flow;
        }
        if (quantity instanceof Length) {
            return length;
        }
        if (quantity instanceof Force) {
            return force;
        }
        if (quantity instanceof Volume) {
            return this == US ? Unit.GAL : Unit.L;
        }
        if (quantity instanceof Ratio) {
            return Unit.PERCENT;
        }
        return quantity instanceof Temperature ? (this == US ? Unit.F : Unit.C) : Unit.S;
    }
}
