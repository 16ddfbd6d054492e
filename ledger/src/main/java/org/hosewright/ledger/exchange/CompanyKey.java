package org.hosewright.ledger.exchange;

/** The company's own key, made once and never let out: it signs what is handed to neighbours. */
public interface CompanyKey {
    /** The half that everybody may know, 64 hexadecimal digits. */
    String publicKey();

    /** The Ed25519 signature of bytes, 128 hexadecimal digits. */
    String sign(byte[] content);
}
