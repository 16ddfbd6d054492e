package org.hosewright.files.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.hosewright.files.Examples;
import org.hosewright.files.yaml.YamlEdit;
import org.hosewright.files.yaml.YamlText;
import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each entry of each example, changed and taken out: what a kit says then is what it said, but for that entry. */
class EveryEntryTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "whole",
                "drill-night.kit.yaml",
                "drill-night.side-tap.kit.yaml",
                "garden-court.kit.yaml",
                "brindle-falls.kit.yaml",
                "vale.kit.yaml"
            })
    void setToItselfHolds(String name) {
        KitDocument kit = document(name);
        for (List<String> path : paths(KitTree.of(kit.kit()))) {
            String value = YamlText.of(at(KitTree.of(kit.kit()), path));
            KitDocument after = kit.withEntry(path, value);
            assertThat(after.kit()).as(name + " " + path).isEqualTo(kit.kit());
            assertThat(comments(after.text())).isEqualTo(comments(kit.text()));
            assertThat(after.withEntry(path, value).text()).isEqualTo(after.text());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "whole",
                "drill-night.kit.yaml",
                "garden-court.kit.yaml",
                "brindle-falls.kit.yaml",
                "vale.kit.yaml"
            })
    void removedAndPutBackHolds(String name) {
        KitDocument kit = document(name);
        Map<String, Object> tree = KitTree.of(kit.kit());
        int removed = 0;
        for (List<String> path : paths(tree)) {
            String without = YamlEdit.remove(kit.text(), name, path);
            if (!(at(tree, path) instanceof Map)) {
                assertThat(comments(kit.text())).as(name + " " + path).containsAll(comments(without));
                assertThat(comments(without).size())
                        .isGreaterThanOrEqualTo(comments(kit.text()).size() - 1);
            }
            try {
                KitDocument less = KitDocument.of(without, name);
                assertThat(pruned(KitTree.of(less.kit()))).as(name + " " + path).isEqualTo(less(tree, path));
                removed++;
            } catch (InvalidInput needed) {
                assertThat(needed.where()).startsWith(name);
            }
            String back = YamlEdit.set(without, name, path, YamlText.of(at(tree, path)));
            assertThat(KitTree.of(KitDocument.of(back, name).kit()))
                    .as(name + " " + path)
                    .isEqualTo(tree);
        }
        assertThat(removed).isGreaterThan(5);
    }

    private static KitDocument document(String name) {
        return name.equals("whole")
                ? KitDocument.of(WholeKit.TEXT.replace("rear-3: {}", "rear-3: { size: 3 in }"), name)
                : Examples.kit(name);
    }

    private static List<List<String>> paths(Map<String, Object> tree) {
        List<List<String>> paths = new ArrayList<>();
        collect(List.of(), tree, paths);
        return paths;
    }

    private static void collect(List<String> here, Map<?, ?> tree, List<List<String>> paths) {
        tree.forEach((key, value) -> {
            List<String> path = new ArrayList<>(here);
            path.add(String.valueOf(key));
            boolean assumed = key.equals("basis") || key.equals("per");
            if (!assumed) {
                paths.add(path);
            }
            if (value instanceof Map<?, ?> map) {
                collect(path, map, paths);
            }
        });
    }

    private static Object at(Map<String, Object> tree, List<String> path) {
        Object value = tree;
        for (String key : path) {
            value = Objects.requireNonNull(((Map<?, ?>) value).get(key));
        }
        return value;
    }

    private static Map<String, Object> less(Map<?, ?> tree, List<String> path) {
        Map<String, Object> copy = new LinkedHashMap<>();
        tree.forEach((key, value) -> {
            boolean on = key.equals(path.get(0));
            if (on && path.size() > 1) {
                copy.put(String.valueOf(key), less((Map<?, ?>) value, path.subList(1, path.size())));
            } else if (!on) {
                copy.put(String.valueOf(key), value);
            }
        });
        return pruned(copy);
    }

    /** Without empty maps, and without the kind of a nozzle of several tips, which follows from its tips. */
    private static Map<String, Object> pruned(Map<?, ?> tree) {
        Map<String, Object> copy = new LinkedHashMap<>();
        tree.forEach((key, value) -> {
            Object kept = value instanceof Map<?, ?> map ? pruned(map) : value;
            boolean written = !key.equals("kind") || !tree.containsKey("settings");
            if (written && !Map.of().equals(kept)) {
                copy.put(String.valueOf(key), kept);
            }
        });
        return copy;
    }

    private static List<String> comments(String text) {
        return text.lines()
                .filter(line -> line.contains("#"))
                .map(line -> line.substring(line.indexOf('#')))
                .toList();
    }
}
