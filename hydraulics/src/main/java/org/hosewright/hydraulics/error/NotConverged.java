package org.hosewright.hydraulics.error;

/** A computation that found no answer, with the worst place named. */
public final class NotConverged extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String worstPlace;

    /** Makes the error.
     *
     * @param reason why there is no answer, as a sentence
     * @param worstPlace the piece or reading where the misfit is largest
     */
    public NotConverged(String reason, String worstPlace) {
        super(reason + " Worst place: " + worstPlace + ".");
        this.worstPlace = worstPlace;
    }

    public String worstPlace() {
        return worstPlace;
    }
}
