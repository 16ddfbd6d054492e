package org.hosewright.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/** The one HTML document that every page is delivered in. */
public final class Shell {
    private final String edition;
    private final String frame;
    private final String importMap;

    public Shell(PageFiles files) {
        edition = files.edition();
        frame = text(files, "shell.html");
        importMap = text(files, "importmap.json").strip().replace("{edition}", edition);
    }

    /** The document of a page. */
    public String html(Page page) {
        return frame.replace("{importmap}", importMap)
                .replace("{edition}", edition)
                .replace("{question}", page.question())
                .replace("{name}", page.name())
                .replace("{module}", page.module())
                .replace("{links}", links(page));
    }

    /** The source expression by which a content security policy allows the import map. */
    public String importMapSource() {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(importMap.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String links(Page here) {
        var links = new StringBuilder();
        for (Page page : Page.ALL) {
            links.append("<a href=\"").append(page.path()).append('"');
            links.append(page.equals(here) ? " aria-current=\"page\">" : ">");
            links.append(page.name()).append("</a>\n");
        }
        return links.toString();
    }

    private static String text(PageFiles files, String name) {
        return new String(files.find(name).orElseThrow().plain(), StandardCharsets.UTF_8);
    }
}
