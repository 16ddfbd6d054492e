package org.hosewright.files.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.util.Base64;
import java.util.EnumSet;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.exchange.CompanyKey;
import org.jspecify.annotations.Nullable;

/** The company's key in a file of its own beside the record, which only its owner may read; made when first needed.
 *
 * <p>It is in no store, no backup and no log. Both halves stand in it as PEM (RFC 7468).
 */
public final class KeyFile implements CompanyKey {
    /** Its name in the folder of the record. */
    public static final String NAME = "exchange.key";

    private static final Set<PosixFilePermission> OWNER =
            EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);
    private static final long LONGEST = 10_000;

    private final Path file;
    private @Nullable Pair pair;

    /** The key of the record in a folder; nothing is read or made before it is needed. */
    public KeyFile(Path folder) {
        file = folder.resolve(NAME);
    }

    private record Pair(PrivateKey own, PublicKey shown) {}

    @Override
    public String publicKey() {
        return Ed25519.digits(pair().shown());
    }

    @Override
    public String sign(byte[] content) {
        return Ed25519.sign(pair().own(), content);
    }

    /** True once the key was made. */
    public boolean exists() {
        return Files.exists(file);
    }

    private synchronized Pair pair() {
        if (pair == null) {
            try {
                if (!Files.exists(file)) {
                    make();
                }
                pair = read();
            } catch (IOException e) {
                throw new UncheckedIOException("could not read or make " + file, e);
            }
        }
        return pair;
    }

    private void make() throws IOException {
        KeyPair made = Ed25519.makePair();
        String text = pem("PRIVATE KEY", made.getPrivate().getEncoded())
                + pem("PUBLIC KEY", made.getPublic().getEncoded());
        Files.createDirectories(file.toAbsolutePath().getParent());
        Path aside = file.resolveSibling("." + NAME + "." + UUID.randomUUID() + ".part");
        try {
            try (FileChannel channel = FileChannel.open(
                    aside, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), ownerOnly())) {
                channel.write(ByteBuffer.wrap(text.getBytes(StandardCharsets.US_ASCII)));
                channel.force(true);
            }
            Files.move(aside, file);
        } catch (FileAlreadyExistsException another) {
            // Somebody made it at the same moment; that one is read.
            Files.deleteIfExists(aside);
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    private Pair read() throws IOException {
        if (isPosix() && !OWNER.containsAll(Files.getPosixFilePermissions(file))) {
            throw new InvalidInput(
                    "who may read " + NAME, "others", "its owner alone: chmod 600 " + file, file.toString());
        }
        String text = Files.size(file) > LONGEST ? "" : Files.readString(file, StandardCharsets.US_ASCII);
        try {
            PrivateKey own = Ed25519.privateKey(part(text, "PRIVATE KEY"));
            PublicKey shown = Ed25519.publicKey(part(text, "PUBLIC KEY"));
            Ed25519.requirePair(own, shown, file.toString());
            return new Pair(own, shown);
        } catch (GeneralSecurityException | IllegalArgumentException broken) {
            throw damaged();
        }
    }

    private byte[] part(String text, String kind) {
        Matcher found = Pattern.compile(
                        "-----BEGIN " + kind + "-----\\s+([A-Za-z0-9+/=\\s]+?)\\s+-----END " + kind + "-----")
                .matcher(text);
        if (!found.find()) {
            throw damaged();
        }
        return Base64.getMimeDecoder().decode(found.group(1));
    }

    /** Says that it is damaged and nothing of what stands in it. */
    private InvalidInput damaged() {
        return new InvalidInput(
                "key of the company",
                "damaged",
                "the file as it was made, from a copy you keep; without one, take it away and a new key is made,"
                        + " which every neighbour must confirm again",
                file.toString());
    }

    private static String pem(String kind, byte[] encoded) {
        return "-----BEGIN " + kind + "-----\n" + Base64.getEncoder().encodeToString(encoded) + "\n-----END " + kind
                + "-----\n";
    }

    private static boolean isPosix() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    }

    private static FileAttribute<?>[] ownerOnly() {
        return isPosix()
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER)}
                : new FileAttribute<?>[0];
    }
}
