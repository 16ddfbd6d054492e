package org.hosewright.files.yaml;

import java.util.List;
import org.hosewright.hydraulics.error.InvalidInput;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;

/** A change to the text of a YAML file that leaves the rest as it was: comments, order, spacing, line ends. */
public final class YamlEdit {
    private final String text;
    private final String source;

    private YamlEdit(String text, String source) {
        this.text = text;
        this.source = source;
    }

    /** The text with a value under a path: added at the end of its parent, or put in place of the old one.
     *
     * <p>A mapping put in place of a mapping is merged key by key, so that comments within stay;
     * keys that the new one lacks go, except those that begin with x-.
     *
     * @param path keys from the top; not empty
     * @param value YAML
     * @throws InvalidInput the value is not YAML, or a scalar stands where the path needs entries
     */
    public static String set(String text, String source, List<String> path, String value) {
        Node node = YamlReader.compose(value, source + ", new " + String.join(".", path));
        return new YamlEdit(text, source).set(path, node);
    }

    /** The text without the entry under a path.
     *
     * @throws InvalidInput there is no such entry
     */
    public static String remove(String text, String source, List<String> path) {
        return new YamlEdit(text, source).remove(path);
    }

    private String set(List<String> path, Node value) {
        MappingNode parent = top();
        for (int i = 0; i < path.size(); i++) {
            var found = NodeText.find(parent, path.get(i));
            boolean last = i == path.size() - 1;
            if (found.isEmpty()) {
                return new EntryText(text).added(parent, path.subList(i, path.size()), value);
            }
            if (last) {
                return replaced(path, found.get(), value);
            }
            if (YamlMap.isEmpty(found.get().getValueNode())) {
                String whole = EntryText.nested(path.subList(i + 1, path.size()), NodeText.flow(value));
                return new EntryText(text).replaced(found.get(), whole);
            }
            parent = mapping(found.get().getValueNode(), path.subList(0, i + 1));
        }
        throw new InvalidInput("path", "", "at least one key", source);
    }

    private String replaced(List<String> path, NodeTuple old, Node value) {
        boolean merge = old.getValueNode() instanceof MappingNode before
                && value instanceof MappingNode after
                && !before.getValue().isEmpty()
                && !after.getValue().isEmpty();
        if (merge) {
            return merged(path, (MappingNode) old.getValueNode(), (MappingNode) value);
        }
        String flow = NodeText.flow(value);
        return flow.equals(NodeText.flow(old.getValueNode())) ? text : new EntryText(text).replaced(old, flow);
    }

    private String merged(List<String> path, MappingNode before, MappingNode after) {
        String result = text;
        for (NodeTuple tuple : after.getValue()) {
            result = new YamlEdit(result, source).set(below(path, tuple), tuple.getValueNode());
        }
        for (NodeTuple tuple : before.getValue()) {
            String key = NodeText.key(tuple);
            if (!key.startsWith("x-") && NodeText.find(after, key).isEmpty()) {
                result = new YamlEdit(result, source).remove(below(path, tuple));
            }
        }
        return result;
    }

    private static List<String> below(List<String> path, NodeTuple tuple) {
        return java.util.stream.Stream.concat(path.stream(), java.util.stream.Stream.of(NodeText.key(tuple)))
                .toList();
    }

    private String remove(List<String> path) {
        MappingNode parent = top();
        NodeTuple holder = null;
        for (int i = 0; i < path.size(); i++) {
            List<String> here = path.subList(0, i + 1);
            NodeTuple found = NodeText.find(parent, path.get(i))
                    .orElseThrow(() -> new InvalidInput("entry", String.join(".", here), "one that is there", source));
            if (i < path.size() - 1) {
                holder = found;
                parent = mapping(found.getValueNode(), here);
            } else if (parent.getValue().size() == 1 && holder != null) {
                return new EntryText(text).replaced(holder, "{}");
            } else {
                return new EntryText(text).removed(parent, found);
            }
        }
        throw new InvalidInput("path", "", "at least one key", source);
    }

    private MappingNode top() {
        return mapping(YamlReader.compose(text, source), List.of());
    }

    private MappingNode mapping(Node node, List<String> path) {
        if (node instanceof MappingNode mapping) {
            return mapping;
        }
        throw new InvalidInput("entry", String.join(".", path), "one that holds entries, as in { key: value }", source);
    }
}
