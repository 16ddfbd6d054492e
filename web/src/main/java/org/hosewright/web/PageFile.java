package org.hosewright.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.zip.GZIPOutputStream;

/** One file of the pages, ready to be sent. */
public final class PageFile {
    private final String path;
    private final byte[] plain;
    private final byte[] gzipped;

    PageFile(String path, byte[] plain) {
        this.path = path;
        this.plain = plain;
        this.gzipped = gzip(plain);
    }

    /** Its place below the pages' folder: "drill/drill.js". */
    public String path() {
        return path;
    }

    public byte[] plain() {
        return plain.clone();
    }

    public byte[] gzipped() {
        return gzipped.clone();
    }

    /** Its media type, by its name's ending. */
    public String type() {
        return switch (path.substring(path.lastIndexOf('.') + 1)) {
            case "js" -> "text/javascript; charset=utf-8";
            case "css" -> "text/css; charset=utf-8";
            case "svg" -> "image/svg+xml";
            case "ttf" -> "font/ttf";
            case "html" -> "text/html; charset=utf-8";
            default -> "application/octet-stream";
        };
    }

    static byte[] gzip(byte[] plain) {
        var bytes = new ByteArrayOutputStream(plain.length / 2 + 64);
        try (var zip = new GZIPOutputStream(bytes)) {
            zip.write(plain);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }
}
