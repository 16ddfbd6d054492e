package org.hosewright.evidence.joint;

/** Where the derivatives of one form go. */
interface Slopes {
    void byLatent(int latent, double slope);

    void byUnknown(int unknown, double slope);
}
