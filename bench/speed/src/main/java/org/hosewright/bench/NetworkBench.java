package org.hosewright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.IntToDoubleFunction;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.line.LineState;
import org.hosewright.hydraulics.network.Network;
import org.hosewright.hydraulics.network.NetworkSolver;
import org.hosewright.hydraulics.network.NetworkState;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Wall time a solve, whole and in tables; bench/compare writes the networks' files and names their folder. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class NetworkBench {
    @Param({"line", "engine", "100", "1000", "10000"})
    String name = "line";

    private static final int TABLE = 64;

    private Network network = new Network();
    private IntToDoubleFunction table = i -> 0;
    private final Line line = OneLine.of(1);

    @Setup
    public void read() throws IOException {
        List<String> text = Files.readAllLines(Path.of(System.getProperty("hosewright.cases"), name + ".txt"));
        network = Case.of(text, 1).network();
        table = new Batch(text, TABLE).tables(true);
    }

    @Benchmark
    public NetworkState solve() {
        return NetworkSolver.solve(network);
    }

    @Benchmark
    @OperationsPerInvocation(TABLE)
    public double batch() {
        return table.applyAsDouble(0);
    }

    @Benchmark
    public LineState closedForm() {
        return OneLine.solve(line, 1);
    }
}
