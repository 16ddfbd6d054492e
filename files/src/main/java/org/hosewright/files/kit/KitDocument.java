package org.hosewright.files.kit;

import java.util.List;
import org.hosewright.ledger.kit.Kit;

/** A kit file: its text exactly as people wrote it, and the kit it says. */
public final class KitDocument {
    private final String text;
    private final String source;

    private KitDocument(String text, String source) {
        this.text = text;
        this.source = source;
    }

    /** The document of a text.
     *
     * @param text YAML of the open format
     * @param source the file's name, for error messages
     * @throws org.hosewright.hydraulics.error.InvalidInput anything in it cannot be used; the message names file, line and key
     */
    public static KitDocument of(String text, String source) {
        return new KitDocument(text, source);
    }

    public Kit kit() {
        throw new UnsupportedOperationException();
    }

    public String text() {
        return text;
    }

    public String source() {
        return source;
    }

    /** Defaults that this kit rests on because the file leaves them out, each as a sentence. */
    public List<String> assumed() {
        throw new UnsupportedOperationException();
    }

    /** The document with an entry set: added, replaced or merged key by key; comments, order and x- keys stay.
     *
     * @param path keys from the top ("hoses", "attack-175", "loss")
     * @param yamlValue the value as YAML
     */
    public KitDocument withEntry(List<String> path, String yamlValue) {
        throw new UnsupportedOperationException();
    }

    /** The document without an entry. */
    public KitDocument withoutEntry(List<String> path) {
        throw new UnsupportedOperationException();
    }
}
