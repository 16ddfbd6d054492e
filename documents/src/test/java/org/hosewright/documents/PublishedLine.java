package org.hosewright.documents;

/**
 * A line as its kit's text has it, worked out by the trade's published formulas in gpm, psi, feet and inches, apart from
 * the product: Q = 29.7 d^2 sqrt(p), loss = C (Q/100)^2 (L/100), reaction 1.57 d^2 p or 0.0505 Q sqrt(p).
 *
 * @param loss of its hose [psi per 100 ft at 100 gpm], and one standard deviation of it
 * @param piping loss of its discharge [psi at 100 gpm], and one standard deviation of it
 * @param bore of its tip [in]; 0 for a fog nozzle of 150 gpm at 75 psi
 * @param dutyTip_psi what its tip is meant for
 * @param most_psi what its gauge must never show
 * @param section_ft length of a section
 */
record PublishedLine(
        Known loss,
        Known piping,
        double correlation,
        double bore,
        double dutyTip_psi,
        double most_psi,
        double section_ft) {
    /** One-sided 95 % point of the normal distribution. */
    private static final double ONE_SIDED = 1.645;

    /** A value and its standard deviation. */
    record Known(double value, double deviation) {}

    /** Tip pressure at 100 gpm [psi]. */
    private double tipAt100() {
        return bore > 0 ? 1e4 / Math.pow(29.7 * bore * bore, 2) : 75 / (1.5 * 1.5);
    }

    double flow_gpm(double pump_psi, double length_ft) {
        return 100 * Math.sqrt(pump_psi / (tipAt100() + piping.value + loss.value * length_ft / 100));
    }

    double tip_psi(double flow_gpm) {
        return tipAt100() * flow_gpm * flow_gpm / 1e4;
    }

    double reaction_lbf(double tip_psi) {
        double flow_gpm = 100 * Math.sqrt(tip_psi / tipAt100());
        return bore > 0 ? 1.57 * bore * bore * tip_psi : 0.0505 * flow_gpm * Math.sqrt(tip_psi);
    }

    /** Whether the duty at a length fits below the limit where the losses are high. */
    boolean fits(double length_ft) {
        double hundreds = length_ft / 100;
        double q2 = dutyTip_psi / tipAt100();
        double both = Math.pow(loss.deviation * hundreds, 2)
                + Math.pow(piping.deviation, 2)
                + 2 * correlation * loss.deviation * hundreds * piping.deviation;
        double high = piping.value + loss.value * hundreds + ONE_SIDED * Math.sqrt(both);
        return dutyTip_psi + q2 * high <= most_psi;
    }
}
