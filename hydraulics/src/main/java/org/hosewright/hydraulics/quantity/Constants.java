package org.hosewright.hydraulics.quantity;

/** The numbers that every formula shares, each once; US and SI forms are the same number in other units. */
public final class Constants {
    /** The international foot [m]. */
    public static final double FOOT_M = 0.3048;

    /** The inch [m]. */
    public static final double INCH_M = 0.0254;

    /** The pound-force [N]: 0.45359237 kg times 9.80665 m/s2. */
    public static final double LBF_N = 0.45359237 * 9.80665;

    /** The pound-force per square inch [Pa]. */
    public static final double PSI_PA = LBF_N / (INCH_M * INCH_M);

    /** The US gallon, 231 cubic inches [m3]. */
    public static final double GALLON_M3 = 231 * INCH_M * INCH_M * INCH_M;

    /** The US gallon per minute [m3/s]. */
    public static final double GPM_M3S = GALLON_M3 / 60;

    /** Pressure of a height of water [Pa/m]: the trade's 0.434 psi/ft, which is 9.817 kPa/m.
     *
     * @source Honolulu Community College, fire hydraulics notes: a 100 ft column stands at 43.4 psi
     */
    public static final double WATER_PA_PER_M = 0.434 * PSI_PA / FOOT_M;

    /** Flow of a smooth bore tip [m3/s per m2 per sqrt(Pa)]: 29.7 d^2 sqrt(p) in gpm, in and psi.
     *
     * @source City of Rohnert Park, driver/operator deck 3-8, "Calculating Friction Loss in Hose Lays"
     */
    public static final double SMOOTH_BORE = 29.7 * GPM_M3S / (INCH_M * INCH_M * Math.sqrt(PSI_PA));

    /** Reaction of a solid stream [N per m2 per Pa]: 1.57 d^2 p in lbf, in and psi.
     *
     * @source trade form of momentum flux, twice the bore's area times its pressure (pi/2 = 1.571)
     */
    public static final double SOLID_REACTION = 1.57;

    /** Reaction of a fog stream [N per (m3/s) per sqrt(Pa)]: 0.0505 Q sqrt(p) in lbf, gpm and psi.
     *
     * @source common practice; sqrt(2 rho) in these units is 0.0526, the trade's figure is 4 % lower
     */
    public static final double FOG_REACTION = 0.0505 * LBF_N / (GPM_M3S * Math.sqrt(PSI_PA));

    /** Loss of hose [Pa s2/m7] whose coefficient is 1 psi per 100 ft at 100 gpm. */
    public static final double US_HOSE_LOSS = PSI_PA / (100 * FOOT_M * (100 * GPM_M3S) * (100 * GPM_M3S));

    /** Loss of a point [Pa s2/m6] that loses 1 psi at 100 gpm. */
    public static final double US_POINT_LOSS = PSI_PA / ((100 * GPM_M3S) * (100 * GPM_M3S));

    /** Loss of hose [Pa s2/m7] that loses 1 kPa per 100 m at 100 L/min. */
    public static final double SI_HOSE_LOSS = 1e3 / (100 * (0.1 / 60) * (0.1 / 60));

    /** Loss of a point [Pa s2/m6] that loses 1 kPa at 100 L/min. */
    public static final double SI_POINT_LOSS = 1e3 / ((0.1 / 60) * (0.1 / 60));

    private Constants() {}
}
