package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.hosewright.files.lay.LayDocument.LaidLine;

/** The names of a lay's tips: the leg's key, with its discharge before it where the key alone is not one tip's. */
final class TipNames {
    private final Map<String, String> byPath;

    private TipNames(Map<String, String> byPath) {
        this.byPath = byPath;
    }

    static TipNames of(LayDocument lay) {
        List<String> paths = new ArrayList<>();
        for (LaidLine line : lay.lines()) {
            paths.addAll(LaidTree.paths(line.leg(), line.discharge()));
        }
        lay.joins().forEach((name, joint) -> paths.addAll(LaidTree.paths(joint.leg(), name)));
        Map<String, String> names = new LinkedHashMap<>();
        for (String path : paths) {
            names.put(path, name(path, paths));
        }
        return new TipNames(names);
    }

    /** Every name by its path, in laying order. */
    Map<String, String> byPath() {
        return Collections.unmodifiableMap(byPath);
    }

    /** The name of the tip that a path leads to. */
    String get(String path) {
        return Objects.requireNonNull(byPath.get(path));
    }

    private static String name(String path, List<String> paths) {
        if (isOnly(path, paths, TipNames::key)) {
            return key(path);
        }
        return isOnly(path, paths, TipNames::ofDischarge) ? ofDischarge(path) : path;
    }

    private static boolean isOnly(String path, List<String> paths, UnaryOperator<String> name) {
        return paths.stream()
                        .filter(one -> name.apply(one).equals(name.apply(path)))
                        .count()
                == 1;
    }

    private static String key(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private static String ofDischarge(String path) {
        int first = path.indexOf('/');
        return first < 0 ? path : path.substring(0, first) + "/" + key(path);
    }
}
