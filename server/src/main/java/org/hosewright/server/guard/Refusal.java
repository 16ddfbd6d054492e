package org.hosewright.server.guard;

/** A request that is not served, with the sentence that says why. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;
    private final String title;

    /** Makes the refusal.
     *
     * @param status HTTP status
     * @param title the kind of refusal in a few words
     * @param says what is wrong and what would do, as a sentence
     */
    public Refusal(int status, String title, String says) {
        super(says);
        this.status = status;
        this.title = title;
    }

    public int status() {
        return status;
    }

    public String title() {
        return title;
    }
}
