package org.hosewright.evidence.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.hosewright.evidence.calibration.NightWriter.Row;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.joint.Fit;
import org.hosewright.evidence.joint.Joint;
import org.hosewright.evidence.joint.Scatter;
import org.hosewright.evidence.joint.Survey;
import org.hosewright.hydraulics.quantity.Length;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The fit of a night against the statistics program R on the same readings: nls with the port algorithm. */
@Tag("long")
class StatisticsProgramTest {
    /** In prior standard deviations; the unknowns lie within 3 of 0. */
    private static final double NEAR = 1e-6;

    private static final String PROGRAM = "night.R";

    @TempDir
    private Path folder;

    @Test
    void exampleNightWithPitotAgrees() throws Exception {
        check(new Tap.Pitot(), 1);
    }

    @Test
    void exampleNightWithSideTapAgrees() throws Exception {
        double ratio = 0.875 / 1.5;
        check(new Tap.Side(Optional.of(Length.ofInches(1.5))), 1 - ratio * ratio * ratio * ratio);
    }

    private void check(Tap tap, double share) throws Exception {
        Joint all = Survey.of(ExampleNight.tapped(tap).night()).joint();
        Joint joint = all.only(List.of(0, 1, 2, 3, 4, 5, 7, 8));
        Fit fit = Fit.of(joint, joint.start());
        List<Double> theirs = answer(fit.joint().scatter(), share);
        assertThat(theirs).hasSize(joint.unknowns().size());
        for (int i = 0; i < theirs.size(); i++) {
            double ours = fit.minimum().point().unknown(i);
            System.out.println(joint.unknowns().get(i).role() + ": ours " + ours + ", R " + theirs.get(i));
            assertThat(ours).isCloseTo(theirs.get(i), within(NEAR));
        }
    }

    private List<Double> answer(Scatter scatter, double share) throws Exception {
        Path program = folder.resolve(PROGRAM);
        try (InputStream in = StatisticsProgramTest.class.getResourceAsStream(PROGRAM)) {
            Files.write(program, Objects.requireNonNull(in, PROGRAM).readAllBytes());
        }
        Path readings = Files.writeString(folder.resolve("readings.csv"), readings());
        List<String> command = new ArrayList<>(List.of("Rscript", "--vanilla", program.toString()));
        for (double argument : new double[] {scatter.pump(), scatter.tip(), scatter.flow(), share}) {
            command.add(Double.toString(argument));
        }
        Process process = new ProcessBuilder(command)
                .redirectInput(readings.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as("exit status of R").isZero();
        return said.lines().map(String::strip).map(Double::valueOf).toList();
    }

    private static String readings() throws IOException {
        StringBuilder csv = new StringBuilder();
        for (Row row : ExampleNight.rows()) {
            if (!row.id().equals("7")) {
                double feet = row.hose().get(0).length().feet();
                csv.append(feet + "," + row.rise() + "," + row.pump() + "," + row.tip() + "," + row.flow() + "\n");
            }
        }
        return csv.toString();
    }
}
