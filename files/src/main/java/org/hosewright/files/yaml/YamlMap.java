package org.hosewright.files.yaml;

import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Pattern;
import org.hosewright.hydraulics.error.InvalidInput;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** The entries of a YAML mapping in their order, each with its place. */
public final class YamlMap {
    /** How ids are spelled. */
    private static final Pattern ID = Pattern.compile("[a-z][a-z0-9-]{0,39}");

    private final Place place;
    private final Map<String, YamlValue> entries;

    private YamlMap(Place place, Map<String, YamlValue> entries) {
        this.place = place;
        this.entries = Collections.unmodifiableMap(entries);
    }

    static YamlMap of(Place place, MappingNode mapping) {
        BrokenByComma.refuse(place, mapping);
        Map<String, YamlValue> entries = new LinkedHashMap<>();
        for (NodeTuple tuple : mapping.getValue()) {
            int line = line(tuple.getKeyNode(), place);
            if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                throw new InvalidInput("a key", "{ … }", "a plain word before the colon", place.text());
            }
            Place at = place.under(key.getValue(), line);
            if (entries.put(key.getValue(), new YamlValue(at, tuple.getValueNode())) != null) {
                throw new InvalidInput("a key given twice", key.getValue(), "each key once", at.text());
            }
        }
        return new YamlMap(place, entries);
    }

    public Place place() {
        return place;
    }

    public Optional<YamlValue> find(String key) {
        return Optional.ofNullable(entries.get(key));
    }

    /** The value of a key that must be there.
     *
     * @param allowed what would do, for the error
     */
    public YamlValue get(String key, String allowed) {
        return find(key).orElseThrow(() -> new InvalidInput(key, "", allowed, place.text()));
    }

    /** The map under a key, where it is there. */
    public Optional<YamlMap> findMap(String key) {
        return find(key).map(YamlValue::map);
    }

    /** Refuses every key but these and those that begin with x-. */
    public void only(String... known) {
        only(Arrays.asList(known));
    }

    private void only(List<String> known) {
        for (var entry : entries.entrySet()) {
            if (!known.contains(entry.getKey()) && !entry.getKey().startsWith("x-")) {
                String where = entry.getValue().place().text();
                throw new InvalidInput("a key here", entry.getKey(), nearestFirst(entry.getKey(), known), where);
            }
        }
    }

    /** The things under ids, each made from its id and value.
     *
     * @param what one such thing, for errors ("a hose")
     */
    public <T> Map<String, T> byId(String what, BiFunction<String, YamlValue, T> make) {
        Map<String, T> things = new LinkedHashMap<>();
        entries.forEach((id, value) -> {
            if (id.startsWith("x-")) {
                return;
            }
            if (!ID.matcher(id).matches()) {
                String allowed = "small letters, digits and dashes, a letter first, at most 40";
                throw new InvalidInput(
                        "the name of " + what, id, allowed, value.place().text());
            }
            things.put(id, make.apply(id, value));
        });
        return things;
    }

    /** All entries, keys as written. */
    public Map<String, YamlValue> entries() {
        return entries;
    }

    private static String nearestFirst(String key, Collection<String> known) {
        String nearest = Nearest.of(key, known)
                .map(near -> "'" + near + "'; all keys here: ")
                .orElse("");
        return nearest + String.join(", ", known) + ", or a key of your own that begins with x-";
    }

    static int line(Node node, Place fallback) {
        return node.getStartMark().map(mark -> mark.getLine() + 1).orElse(fallback.line());
    }

    static boolean isEmpty(Node node) {
        return node instanceof ScalarNode scalar && scalar.getTag().equals(Tag.NULL);
    }
}
