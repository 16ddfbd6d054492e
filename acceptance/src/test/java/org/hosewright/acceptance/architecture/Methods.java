package org.hosewright.acceptance.architecture;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.tools.ToolProvider;

/** The methods written in a set of source files. */
final class Methods {
    private Methods() {}

    /** A method as it stands in its file; its lines run from the opening to the closing brace. */
    record Method(String file, String name, int lines, List<String> annotations) {
        @Override
        public String toString() {
            return file + " " + name;
        }
    }

    static List<Method> listIn(List<Path> sources) {
        var compiler = ToolProvider.getSystemJavaCompiler();
        try (var files = compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
            var units = files.getJavaFileObjectsFromPaths(sources);
            var task = (JavacTask) compiler.getTask(null, files, null, List.of("-proc:none"), null, units);
            var positions = Trees.instance(task).getSourcePositions();
            var methods = new ArrayList<Method>();
            for (var unit : task.parse()) {
                unit.accept(new Collector(unit, positions), methods);
            }
            return methods;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static final class Collector extends TreeScanner<Void, List<Method>> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;

        Collector(CompilationUnitTree unit, SourcePositions positions) {
            this.unit = unit;
            this.positions = positions;
        }

        @Override
        public Void visitMethod(MethodTree method, List<Method> found) {
            var annotations = method.getModifiers().getAnnotations().stream()
                    .map(annotation -> annotation.getAnnotationType().toString())
                    .toList();
            var file = Sources.nameOf(Path.of(unit.getSourceFile().toUri()));
            found.add(new Method(file, method.getName().toString(), lines(method), annotations));
            return super.visitMethod(method, found);
        }

        private int lines(MethodTree method) {
            var body = method.getBody();
            if (body == null) {
                return 0;
            }
            var map = unit.getLineMap();
            long first = map.getLineNumber(positions.getStartPosition(unit, body));
            long last = map.getLineNumber(positions.getEndPosition(unit, body));
            return (int) (last - first + 1);
        }
    }
}
