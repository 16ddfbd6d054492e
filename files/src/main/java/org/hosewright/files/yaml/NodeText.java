package org.hosewright.files.yaml;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.hosewright.hydraulics.error.InvalidInput;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** The piece of a text that a YAML node takes up, and a node written anew. */
record NodeText(String text) {
    /** Where a node begins [characters from the start]. */
    int start(Node node) {
        return index(node.getStartMark());
    }

    /** Where the last character of a node's own content ends; comments and blank lines after it are not its own. */
    int end(Node node) {
        if (node instanceof MappingNode mapping && isBlock(mapping)) {
            NodeTuple last = mapping.getValue().get(mapping.getValue().size() - 1);
            return Math.max(end(last.getKeyNode()), end(last.getValueNode()));
        }
        if (node instanceof SequenceNode sequence
                && !sequence.getValue().isEmpty()
                && text.charAt(start(node)) != '[') {
            return end(sequence.getValue().get(sequence.getValue().size() - 1));
        }
        int end = index(node.getEndMark());
        boolean literal = node instanceof ScalarNode scalar
                && (scalar.getScalarStyle() == ScalarStyle.LITERAL || scalar.getScalarStyle() == ScalarStyle.FOLDED);
        while (literal && end > 0 && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    /** Whether a mapping is written over lines, without braces. */
    boolean isBlock(MappingNode mapping) {
        return !mapping.getValue().isEmpty() && text.charAt(start(mapping)) != '{';
    }

    /** Column of a node's first character, from 0. */
    static int column(Node node) {
        return node.getStartMark().map(Mark::getColumn).orElse(0);
    }

    /** A node written on one line, good within braces and outside them. */
    static String flow(Node node) {
        if (node instanceof MappingNode mapping) {
            return braces(
                    mapping.getValue().stream()
                            .map(tuple -> flow(tuple.getKeyNode()) + ": " + flow(tuple.getValueNode()))
                            .toList(),
                    "{ ",
                    " }");
        }
        if (node instanceof SequenceNode sequence) {
            return braces(sequence.getValue().stream().map(NodeText::flow).toList(), "[ ", " ]");
        }
        ScalarNode scalar = (ScalarNode) node;
        boolean bare = scalar.isPlain() && !scalar.getTag().getValue().endsWith(":str");
        return bare ? (YamlMap.isEmpty(scalar) ? "null" : scalar.getValue()) : YamlText.scalar(scalar.getValue());
    }

    /** The entry of a key. */
    static Optional<NodeTuple> find(MappingNode mapping, String key) {
        return mapping.getValue().stream()
                .filter(tuple -> key.equals(key(tuple)))
                .findFirst();
    }

    static String key(NodeTuple tuple) {
        return tuple.getKeyNode() instanceof ScalarNode key ? key.getValue() : "";
    }

    private static String braces(List<String> items, String open, String close) {
        return items.isEmpty()
                ? open.strip() + close.strip()
                : items.stream().collect(Collectors.joining(", ", open, close));
    }

    private int index(Optional<Mark> mark) {
        int codePoints = mark.orElseThrow(() -> new InvalidInput("YAML", "a value without a place", "YAML 1.2", ""))
                .getIndex();
        return text.offsetByCodePoints(0, codePoints);
    }
}
