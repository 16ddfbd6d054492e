package org.hosewright.evidence.fit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** One NIST set: two starts, certified values with standard deviations, and the data. */
final class NistSet {
    private static final int DATA_FROM_LINE = 60;

    final List<double[]> parameters = new ArrayList<>();
    final List<double[]> data = new ArrayList<>();

    private NistSet() {}

    /** A set transcribed beside the tests. */
    static NistSet transcribed(String name) {
        NistSet set = new NistSet();
        for (String line : resource(name + ".csv").lines().toList()) {
            String[] cells = line.split(",", -1);
            if (line.startsWith("data,")) {
                set.data.add(numbers(cells));
            } else if (!line.startsWith("#")) {
                set.parameters.add(numbers(cells));
            }
        }
        return set;
    }

    /** A set as NIST distributes it. */
    static NistSet distributed(Path file) throws IOException {
        NistSet set = new NistSet();
        List<String> lines = Files.readAllLines(file, StandardCharsets.US_ASCII);
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).trim();
            if (i < DATA_FROM_LINE && line.matches("b\\d+ *=.*")) {
                set.parameters.add(numbers(line.replace("=", " ").split("\\s+", -1)));
            } else if (i >= DATA_FROM_LINE && line.matches("[-\\d.].*")) {
                set.data.add(numbers(("data " + line).split("\\s+", -1)));
            }
        }
        return set;
    }

    private static double[] numbers(String[] cells) {
        double[] numbers = new double[cells.length - 1];
        for (int i = 1; i < cells.length; i++) {
            numbers[i - 1] = Double.parseDouble(cells[i].trim());
        }
        return numbers;
    }

    private static String resource(String name) {
        try (var in = NistSet.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    double[] start(int which) {
        return column(which - 1);
    }

    double[] certified() {
        return column(2);
    }

    double[] certifiedDeviations() {
        return column(3);
    }

    private double[] column(int index) {
        return parameters.stream().mapToDouble(row -> row[index]).toArray();
    }

    Blocks problem(NistModel model) {
        return new Regression(this, model);
    }

    private record Regression(NistSet set, NistModel model) implements Blocks {
        @Override
        public int unknowns() {
            return set.parameters.size();
        }

        @Override
        public int size() {
            return set.data.size();
        }

        @Override
        public int rows(int block) {
            return 1;
        }

        @Override
        public int latents(int block) {
            return 0;
        }

        @Override
        public void evaluate(int block, double[] unknowns, double[] latents, Rows into) {
            double[] slopes = new double[unknowns.length];
            double[] point = set.data.get(block);
            into.residual(0, model.value(unknowns, point[1], slopes) - point[0]);
            for (int j = 0; j < slopes.length; j++) {
                into.byUnknown(0, j, slopes[j]);
            }
        }
    }
}
