package org.hosewright.server.setup;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.KeyStore;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.Date;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;
import org.hosewright.ledger.storage.StorageFailure;

/** A certificate that the server makes for itself, for a station whose machine has no name on the internet. A browser
 * asks about it once; its fingerprint is there to be compared.
 */
public final class OwnCertificate {
    private static final String FILE = "tls.p12";
    private static final String ALIAS = "hosewright";

    /** Of the file; what keeps the key is that nobody else may read the file. */
    private static final String PASSWORD = "hosewright";

    private static final Duration LASTS = Duration.ofDays(397);
    private static final Duration RENEWED_BEFORE = Duration.ofDays(30);
    private static final Duration CLOCKS_DIFFER = Duration.ofDays(1);
    private static final int SERIAL_BITS = 128;

    private final Path file;

    /** The certificate kept in a folder.
     *
     * @param folder of the record
     */
    public OwnCertificate(Path folder) {
        file = folder.resolve(FILE);
    }

    /** The certificate for these names; made anew where there is none, it runs out, or a name is not in it.
     *
     * @param names and numeric addresses by which the machine is called
     * @throws StorageFailure the file cannot be read or written
     */
    public Certificate forNames(Set<String> names, Instant now) {
        try {
            if (find().filter(kept -> isGood(kept, names, now)).isEmpty()) {
                make(names, now);
            }
            return new Certificate(file, PASSWORD);
        } catch (IOException | GeneralSecurityException | OperatorCreationException e) {
            throw unusable(e);
        }
    }

    /** SHA-256 of the certificate in pairs of digits, as a browser shows it; empty where there is none. */
    public String fingerprint() {
        try {
            Optional<X509Certificate> kept = find();
            if (kept.isEmpty()) {
                return "";
            }
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(kept.get().getEncoded());
            return HexFormat.ofDelimiter(":").withUpperCase().formatHex(digest);
        } catch (IOException | GeneralSecurityException e) {
            throw unusable(e);
        }
    }

    private StorageFailure unusable(Exception cause) {
        return new StorageFailure(
                StorageFailure.Kind.DAMAGED,
                "The certificate cannot be read or made (" + cause.getMessage() + ").",
                "Make the folder writable, or put the file aside so that a new one is made.",
                file.toString(),
                cause);
    }

    private Optional<X509Certificate> find() throws IOException, GeneralSecurityException {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        KeyStore store = KeyStore.getInstance("PKCS12");
        try (InputStream in = Files.newInputStream(file)) {
            store.load(in, PASSWORD.toCharArray());
        }
        return Optional.ofNullable((X509Certificate) store.getCertificate(ALIAS));
    }

    private static boolean isGood(X509Certificate kept, Set<String> names, Instant now) {
        try {
            Collection<List<?>> found = kept.getSubjectAlternativeNames();
            var said = new HashSet<String>();
            (found == null ? List.<List<?>>of() : found).forEach(name -> said.add(String.valueOf(name.get(1))));
            boolean lasts = kept.getNotAfter().toInstant().isAfter(now.plus(RENEWED_BEFORE));
            return lasts && said.containsAll(names);
        } catch (GeneralSecurityException e) {
            return false;
        }
    }

    private void make(Set<String> names, Instant now)
            throws IOException, GeneralSecurityException, OperatorCreationException {
        var random = new SecureRandom();
        KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(new ECGenParameterSpec("secp256r1"), random);
        KeyPair keys = generator.generateKeyPair();
        var name = new X500Name("CN=Hosewright of this station");
        X509v3CertificateBuilder builder = new JcaX509v3CertificateBuilder(
                name,
                new BigInteger(SERIAL_BITS, random).add(BigInteger.ONE),
                Date.from(now.minus(CLOCKS_DIFFER)),
                Date.from(now.plus(LASTS)),
                name,
                keys.getPublic());
        builder.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
        builder.addExtension(Extension.subjectAlternativeName, false, alternatives(names));
        X509Certificate made = new JcaX509CertificateConverter()
                .getCertificate(builder.build(new JcaContentSignerBuilder("SHA256withECDSA").build(keys.getPrivate())));
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, null);
        store.setKeyEntry(ALIAS, keys.getPrivate(), PASSWORD.toCharArray(), new X509Certificate[] {made});
        write(store);
    }

    private static GeneralNames alternatives(Set<String> names) {
        return new GeneralNames(names.stream()
                .sorted()
                .map(name -> new GeneralName(isNumeric(name) ? GeneralName.iPAddress : GeneralName.dNSName, name))
                .toArray(GeneralName[]::new));
    }

    private static boolean isNumeric(String name) {
        return name.contains(":") || name.toLowerCase(Locale.ROOT).matches("[0-9.]+");
    }

    private void write(KeyStore store) throws IOException, GeneralSecurityException {
        Files.createDirectories(file.getParent());
        Path beside = Files.createTempFile(
                file.getParent(),
                "tls",
                ".new",
                PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        try (OutputStream out = Files.newOutputStream(beside)) {
            store.store(out, PASSWORD.toCharArray());
        }
        Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }
}
