package org.hosewright.files.kit;

import java.util.List;
import java.util.regex.Pattern;
import org.hosewright.files.yaml.YamlEdit;
import org.hosewright.ledger.kit.Kit;

/** A kit file: its text exactly as people wrote it, and the kit it says. */
public final class KitDocument {
    /** A line end of very old machines; it becomes the usual one. */
    private static final Pattern LONE_RETURN = Pattern.compile("\r(?!\n)");

    private final String text;
    private final String source;
    private final KitReader.Found found;

    private KitDocument(String text, String source) {
        this.text = LONE_RETURN.matcher(text).replaceAll("\n");
        this.source = source;
        this.found = KitReader.read(this.text, source);
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
        return found.kit();
    }

    public String text() {
        return text;
    }

    public String source() {
        return source;
    }

    /** Defaults that this kit rests on because the file leaves them out, each as a sentence. */
    public List<String> assumed() {
        return found.assumed();
    }

    /** The document with an entry set: added, replaced or merged key by key; comments, order and x- keys stay.
     *
     * @param path keys from the top ("hoses", "attack-175", "loss")
     * @param yamlValue the value as YAML
     * @throws org.hosewright.hydraulics.error.InvalidInput the kit would no longer be one
     */
    public KitDocument withEntry(List<String> path, String yamlValue) {
        return with(List.of(new KitChange.Set(path, yamlValue)));
    }

    /** The document without an entry.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput there is no such entry, or something else in the kit needs it
     */
    public KitDocument withoutEntry(List<String> path) {
        return with(List.of(new KitChange.Remove(path)));
    }

    /** The document with changes made one after the other; only the outcome must be a kit, not each step. */
    public KitDocument with(List<KitChange> changes) {
        String changed = text;
        for (KitChange change : changes) {
            changed = change instanceof KitChange.Set set
                    ? YamlEdit.set(changed, source, set.path(), set.yamlValue())
                    : YamlEdit.remove(changed, source, change.path());
        }
        return new KitDocument(changed, source);
    }
}
