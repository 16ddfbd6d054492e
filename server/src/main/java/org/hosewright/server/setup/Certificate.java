package org.hosewright.server.setup;

import java.nio.file.Path;

/** A certificate with its private key, in a PKCS #12 file.
 *
 * @param file which only the person who runs the server may read
 * @param password of the file
 */
public record Certificate(Path file, String password) {
    @Override
    public String toString() {
        return "certificate in " + file;
    }
}
