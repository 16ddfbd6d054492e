package org.hosewright.ledger.order;

import org.hosewright.hydraulics.error.InvalidInput;

/** How many different people an order takes.
 *
 * @param signers 1, or 2 where the one who proposed an order may not sign it
 */
public record SigningRule(int signers) {
    /** Until the company lays down another one. */
    public static final SigningRule AT_FIRST = new SigningRule(1);

    private static final int MOST = 2;

    public SigningRule {
        if (signers < 1 || signers > MOST) {
            throw new InvalidInput("people that an order takes", Integer.toString(signers), "1 or 2", "");
        }
    }
}
