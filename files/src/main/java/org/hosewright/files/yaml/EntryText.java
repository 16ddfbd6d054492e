package org.hosewright.files.yaml;

import java.util.List;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;

/** One entry cut out of a text, put into it, or written over; all else keeps its place. */
final class EntryText {
    private final String text;
    private final NodeText nodes;
    private final String newline;

    EntryText(String text) {
        this.text = text;
        this.nodes = new NodeText(text);
        this.newline = text.contains("\r\n") ? "\r\n" : "\n";
    }

    /** A value under keys within braces: {@code { a: { b: value } }}; the value alone where there are no keys. */
    static String nested(List<String> keys, String value) {
        return keys.isEmpty()
                ? value
                : "{ " + YamlText.key(keys.get(0)) + ": " + nested(keys.subList(1, keys.size()), value) + " }";
    }

    /** The text with an entry behind the last one of its parent. */
    String added(MappingNode parent, List<String> path, Node value) {
        String key = YamlText.key(path.get(0));
        String entry = key + ": " + nested(path.subList(1, path.size()), NodeText.flow(value));
        if (nodes.isBlock(parent)) {
            int end = lineEnd(nodes.end(parent));
            String indent = " ".repeat(NodeText.column(parent.getValue().get(0).getKeyNode()));
            return spliced(end, end, newline + indent + entry);
        }
        int open = nodes.start(parent) + 1;
        if (parent.getValue().isEmpty()) {
            String rest = text.startsWith("}", open) ? " " : "";
            return spliced(open, open, " " + entry + rest);
        }
        int end = end(parent.getValue().get(parent.getValue().size() - 1));
        return spliced(end, end, ", " + entry);
    }

    /** The text with another value in place of an entry's. */
    String replaced(NodeTuple tuple, String flow) {
        Node old = tuple.getValueNode();
        if (!YamlMap.isEmpty(old) && !startsOnLaterLine(tuple)) {
            return spliced(nodes.start(old), nodes.end(old), flow);
        }
        int colon = colon(tuple);
        String put = colon < 0 ? ": " + flow : " " + flow;
        int behind = colon < 0 ? nodes.end(tuple.getKeyNode()) : colon + 1;
        if (YamlMap.isEmpty(old) && nodes.start(old) == nodes.end(old)) {
            return spliced(behind, behind, put);
        }
        int from = YamlMap.isEmpty(old) ? nodes.start(old) : lineStart(nodes.start(old));
        int to = YamlMap.isEmpty(old)
                ? nodes.end(old)
                : Math.min(text.length(), lineEnd(nodes.end(old)) + newline.length());
        return text.substring(0, behind) + put + text.substring(behind, from) + text.substring(to);
    }

    /** The text without an entry. */
    String removed(MappingNode parent, NodeTuple tuple) {
        int start = nodes.start(tuple.getKeyNode());
        int end = end(tuple);
        if (nodes.isBlock(parent)) {
            return spliced(lineStart(start), Math.min(text.length(), lineEnd(end) + newline.length()), "");
        }
        int place = parent.getValue().indexOf(tuple);
        if (place < parent.getValue().size() - 1) {
            return spliced(start, nodes.start(parent.getValue().get(place + 1).getKeyNode()), "");
        }
        if (place == 0) {
            return spliced(start, end, "");
        }
        int before = end(parent.getValue().get(place - 1));
        int comma = comma(before);
        while (start - 1 > comma && (text.charAt(start - 1) == ' ' || text.charAt(start - 1) == '\t')) {
            start--;
        }
        return text.substring(0, comma) + text.substring(comma + 1, start) + text.substring(end);
    }

    /** The comma behind an entry within braces; one in a comment is none. */
    private int comma(int from) {
        int at = from;
        while (text.charAt(at) != ',') {
            at = text.charAt(at) == '#' ? lineEnd(at) : at + 1;
        }
        return at;
    }

    private int end(NodeTuple tuple) {
        return Math.max(nodes.end(tuple.getKeyNode()), nodes.end(tuple.getValueNode()));
    }

    private boolean startsOnLaterLine(NodeTuple tuple) {
        int key = nodes.end(tuple.getKeyNode());
        return text.substring(key, nodes.start(tuple.getValueNode())).contains("\n")
                && lineStart(nodes.start(tuple.getValueNode())) > key;
    }

    private int colon(NodeTuple tuple) {
        int at = nodes.end(tuple.getKeyNode());
        while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
            at++;
        }
        return at < text.length() && text.charAt(at) == ':' ? at : -1;
    }

    private int lineStart(int at) {
        return text.lastIndexOf('\n', at - 1) + 1;
    }

    /** Where the line ends that a place is on, its line end not included. */
    private int lineEnd(int at) {
        int end = text.indexOf('\n', at);
        end = end < 0 ? text.length() : end;
        return end > at && text.charAt(end - 1) == '\r' ? end - 1 : end;
    }

    private String spliced(int from, int to, String put) {
        return text.substring(0, from) + put + text.substring(to);
    }
}
