package org.hosewright.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.Collections;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;

/** All files that the pages are made of, ours and the libraries'; a browser can ask for these and for no other. */
public final class PageFiles {
    private static final int EDITION_LENGTH = 12;

    private final Map<String, PageFile> files;
    private final String edition;

    private PageFiles(Map<String, PageFile> files) {
        this.files = Collections.unmodifiableMap(files);
        this.edition = hash(files.values());
    }

    /** The files as they were built. */
    public static PageFiles load() {
        var files = new TreeMap<String, PageFile>();
        new String(read("files.txt"), StandardCharsets.UTF_8)
                .lines()
                .forEach(name -> files.put(name, new PageFile(name, read(name))));
        var libraries = new Properties();
        try (InputStream list = open("libraries.properties")) {
            libraries.load(list);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (String name : libraries.stringPropertyNames()) {
            files.put(name, new PageFile(name, read("/META-INF/resources/webjars/" + libraries.getProperty(name))));
        }
        return new PageFiles(files);
    }

    /** A name for exactly these files: another when any of them changes. */
    public String edition() {
        return edition;
    }

    public Optional<PageFile> find(String path) {
        return Optional.ofNullable(files.get(path));
    }

    public Collection<PageFile> listAll() {
        return files.values();
    }

    private static byte[] read(String name) {
        try (InputStream in = open(name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String name) {
        InputStream in = PageFiles.class.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException("The program was built without its file " + name + ".");
        }
        return in;
    }

    private static String hash(Collection<PageFile> files) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            for (PageFile file : files) {
                digest.update(file.path().getBytes(StandardCharsets.UTF_8));
                digest.update(file.plain());
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, EDITION_LENGTH);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
