package org.hosewright.files.yaml;

import org.hosewright.hydraulics.error.InvalidInput;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** The trap that a comma sets within braces: {@code rated: 1,500 gpm} falls apart into rated 1 and a key "500 gpm". */
final class BrokenByComma {
    private BrokenByComma() {}

    /** Refuses a mapping that holds a quantity with a comma. */
    static void refuse(Place place, MappingNode mapping) {
        if (mapping.getFlowStyle() != FlowStyle.FLOW) {
            return;
        }
        ScalarNode before = null;
        String key = "";
        for (NodeTuple tuple : mapping.getValue()) {
            boolean tail = YamlMap.isEmpty(tuple.getValueNode()) && beginsWithDigit(tuple);
            if (tail && before != null) {
                String whole = before.getValue() + "," + ((ScalarNode) tuple.getKeyNode()).getValue();
                Place at = place.under(key, YamlMap.line(before, place));
                String allowed = "no comma for thousands (1500) and a point for decimals (1.5)";
                throw new InvalidInput("a quantity with a comma", whole, allowed, at.text());
            }
            before = endsWithDigit(tuple);
            key = tuple.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
        }
    }

    private static boolean beginsWithDigit(NodeTuple tuple) {
        return tuple.getKeyNode() instanceof ScalarNode key
                && !key.getValue().isEmpty()
                && Character.isDigit(key.getValue().charAt(0));
    }

    private static @org.jspecify.annotations.Nullable ScalarNode endsWithDigit(NodeTuple tuple) {
        boolean digit = tuple.getValueNode() instanceof ScalarNode value
                && !value.getValue().isEmpty()
                && Character.isDigit(value.getValue().charAt(value.getValue().length() - 1));
        return digit ? (ScalarNode) tuple.getValueNode() : null;
    }
}
