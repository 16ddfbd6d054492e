package org.hosewright.files.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.hosewright.hydraulics.error.InvalidInput;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** One value of a YAML file with the place it stands at. */
public final class YamlValue {
    private final Place place;
    private final Node node;

    YamlValue(Place place, Node node) {
        this.place = place;
        this.node = node;
    }

    public Place place() {
        return place;
    }

    public boolean isMap() {
        return node instanceof MappingNode;
    }

    /** The entries below it. */
    public YamlMap map() {
        if (node instanceof MappingNode mapping) {
            return YamlMap.of(place, mapping);
        }
        throw refused(name(), "entries, as in { key: value }");
    }

    /** The items of a list. */
    public List<YamlValue> list() {
        if (!(node instanceof SequenceNode sequence)) {
            throw refused(name(), "a list, each item after a dash");
        }
        List<YamlValue> items = new ArrayList<>();
        for (Node item : sequence.getValue()) {
            int line = item.getStartMark().map(mark -> mark.getLine() + 1).orElse(place.line());
            items.add(new YamlValue(place.under(String.valueOf(items.size() + 1), line), item));
        }
        return items;
    }

    /** The text as written, without quotes.
     *
     * @param allowed what would do, for the error
     */
    public String text(String allowed) {
        if (node instanceof ScalarNode scalar
                && !scalar.getTag().equals(Tag.NULL)
                && !scalar.getValue().isBlank()) {
            return scalar.getValue().strip();
        }
        throw refused(name(), allowed);
    }

    /** What stands here as plain texts, lists and maps in their order; nothing at all is an empty text. */
    public Object plain() {
        if (node instanceof MappingNode) {
            Map<String, Object> plain = new LinkedHashMap<>();
            map().entries().forEach((key, value) -> plain.put(key, value.plain()));
            return plain;
        }
        if (node instanceof SequenceNode) {
            return list().stream().map(YamlValue::plain).toList();
        }
        return shown();
    }

    /** The text read by a parser whose errors get this place.
     *
     * @param allowed what would do where there is no text at all
     */
    public <T> T read(String allowed, Function<String, T> parse) {
        String text = text(allowed);
        return placed(() -> parse.apply(text));
    }

    /** What a maker gives, any error of it placed here. */
    public <T> T placed(Supplier<T> make) {
        try {
            return make.get();
        } catch (InvalidInput e) {
            throw e.at(place.text());
        }
    }

    /** The error of this value. */
    public InvalidInput refused(String what, String allowed) {
        return new InvalidInput(what, shown(), allowed, place.text());
    }

    /** The last key on the way here. */
    private String name() {
        String name = place.path().substring(place.path().lastIndexOf('.') + 1);
        return name.isEmpty() ? "content" : name;
    }

    private String shown() {
        if (node instanceof ScalarNode scalar) {
            return scalar.getTag().equals(Tag.NULL) ? "" : scalar.getValue();
        }
        return node instanceof MappingNode ? "{ … }" : "[ … ]";
    }
}
