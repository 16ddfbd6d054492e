package org.hosewright.files.exchange;

import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.HexFormat;
import org.hosewright.hydraulics.error.InvalidInput;

/** Keys and signatures of Ed25519 as hexadecimal digits, worked by the Java platform.
 *
 * @source RFC 8032, Edwards-Curve Digital Signature Algorithm, 2017; RFC 8410 for the keys' encoding
 */
final class Ed25519 {
    private static final String NAME = "Ed25519";
    /** What stands before the 32 bytes of every public key. @source RFC 8410, section 4 */
    private static final String BEFORE_KEY = "302a300506032b6570032100";

    private Ed25519() {}

    static KeyPair makePair() {
        try {
            return KeyPairGenerator.getInstance(NAME).generateKeyPair();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java since 15 has Ed25519", e);
        }
    }

    /** The 64 digits of a public key. */
    static String digits(PublicKey key) {
        return HexFormat.of().formatHex(key.getEncoded()).substring(BEFORE_KEY.length());
    }

    static PrivateKey privateKey(byte[] encoded) throws GeneralSecurityException {
        return KeyFactory.getInstance(NAME).generatePrivate(new PKCS8EncodedKeySpec(encoded));
    }

    static PublicKey publicKey(byte[] encoded) throws GeneralSecurityException {
        return KeyFactory.getInstance(NAME).generatePublic(new X509EncodedKeySpec(encoded));
    }

    static String sign(PrivateKey key, byte[] content) {
        try {
            Signature signature = Signature.getInstance(NAME);
            signature.initSign(key);
            signature.update(content);
            return HexFormat.of().formatHex(signature.sign());
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("a key that cannot sign", e);
        }
    }

    /** Whether a signature is of this content by this key.
     *
     * @param key 64 digits
     * @param signed 128 digits
     */
    static boolean holds(String key, byte[] content, String signed) {
        try {
            Signature signature = Signature.getInstance(NAME);
            signature.initVerify(publicKey(HexFormat.of().parseHex(BEFORE_KEY + key)));
            signature.update(content);
            return signature.verify(HexFormat.of().parseHex(signed));
        } catch (GeneralSecurityException e) {
            // A key that is no point of the curve, or a signature outside its range: neither signs anything.
            return false;
        }
    }

    /** Refuses a pair whose halves do not belong together. */
    static void requirePair(PrivateKey own, PublicKey shown, String where) {
        byte[] any = {1, 2, 3};
        if (!holds(digits(shown), any, sign(own, any))) {
            throw new InvalidInput(
                    "key of the company", "two halves that do not belong together", "a whole one", where);
        }
    }
}
