package org.hosewright.files.kit;

import java.util.Map;
import org.hosewright.files.yaml.YamlText;
import org.hosewright.ledger.kit.Kit;

/** A kit written out whole, in the open format and one fixed order, one thing a line. */
public final class KitText {
    private KitText() {}

    /** The text of a kit, in the kit's own units; reading it back gives an equal kit. */
    public static String write(Kit kit) {
        StringBuilder text = new StringBuilder();
        KitTree.of(kit).forEach((key, value) -> {
            if (value instanceof Map<?, ?> section && isSection(section)) {
                text.append(key).append(":\n");
                section.forEach((id, thing) -> text.append("  ")
                        .append(YamlText.key(String.valueOf(id)))
                        .append(": ")
                        .append(YamlText.of(java.util.Objects.requireNonNull(thing)))
                        .append('\n'));
            } else {
                text.append(key).append(": ").append(YamlText.of(value)).append('\n');
            }
        });
        return text.toString();
    }

    /** A kit as plain keys and values in the order of the open format: texts, numbers, and maps of such. */
    public static Map<String, Object> entries(Kit kit) {
        return KitTree.of(kit);
    }

    private static boolean isSection(Map<?, ?> map) {
        return map.values().stream().allMatch(Map.class::isInstance) && !map.containsKey("reaction");
    }
}
