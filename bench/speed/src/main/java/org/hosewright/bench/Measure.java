package org.hosewright.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.hosewright.hydraulics.line.Line;
import org.hosewright.hydraulics.network.Network;
import org.hosewright.hydraulics.network.NetworkSolver;
import org.hosewright.hydraulics.network.NetworkState;

/** CPU microseconds a solve, of the whole process once it is warm.
 *
 * <pre>
 * apart FILE            how far our heads are from the reference's [psi]
 * memory FILE           what one solve takes from the heap [MB]
 * solve FILE COUNT      whole solves of networks that stand ready: laying out, ordering, solving
 * call  FILE COUNT      the same, and the network built from names each time
 * batch FILE COUNT      tables of scenarios of one network laid out once: the head of the first node and the loss of the
 *                       first hose vary, each scenario from no answer known before
 * along FILE COUNT      the same, each scenario from the network's own answer along its tangent
 * one   FILE COUNT      the same as batch, scenario by scenario
 * line  FILE COUNT      lines that stand ready, in closed form
 * line-call FILE COUNT  the same, and the line built from its equipment each time
 * </pre>
 */
public final class Measure {
    private static final int VARIED = 100;

    /** Scenarios of one table. */
    private static final int TABLE = 640;

    /** Long enough for the compiler to be done. */
    private static final int WARM_share = 2;

    private Measure() {}

    /** Prints one number. */
    public static void main(String[] words) throws IOException {
        Path file = Path.of(words[1]);
        if (words[0].equals("apart")) {
            System.out.println(apart_psi(Case.read(file, 1)));
        } else if (words[0].equals("memory")) {
            System.out.println(memory_MB(file));
        } else {
            time(words, file);
        }
    }

    private static void time(String[] words, Path file) throws IOException {
        boolean inTables = words[0].equals("batch") || words[0].equals("along");
        int atOnce = inTables ? TABLE : 1;
        int count = Math.max(1, Integer.parseInt(words[2]) / atOnce);
        IntToDoubleFunction once = solving(words[0], file);
        run(once, Math.max(1, count * WARM_share));
        OperatingSystemMXBean machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        long before = machine.getProcessCpuTime();
        double sum = run(once, count);
        long spent = machine.getProcessCpuTime() - before;
        System.out.println(spent / 1e3 / count / atOnce);
        if (Double.isNaN(sum)) {
            throw new IllegalStateException("no flow");
        }
    }

    private static IntToDoubleFunction solving(String what, Path file) throws IOException {
        List<String> text = java.nio.file.Files.readAllLines(file);
        if (what.equals("call")) {
            return i -> flow(Case.of(text, share(i)).network());
        }
        if (what.equals("batch") || what.equals("along")) {
            return new Batch(text, TABLE).tables(what.equals("batch"));
        }
        if (what.equals("one")) {
            return new Batch(text, VARIED).oneByOne();
        }
        if (what.equals("line-call")) {
            return i -> OneLine.solve(OneLine.of(share(i)), share(i)).flow().cubicMetresPerSecond();
        }
        if (what.equals("line")) {
            List<Line> lines = IntStream.range(0, VARIED)
                    .mapToObj(i -> OneLine.of(share(i)))
                    .toList();
            return i -> OneLine.solve(lines.get(i % VARIED), share(i)).flow().cubicMetresPerSecond();
        }
        int ready = text.size() > 20_000 ? 1 : text.size() > 2000 ? 3 : VARIED;
        List<Network> networks = IntStream.range(0, ready)
                .mapToObj(i -> Case.of(text, share(i)).network())
                .toList();
        return i -> flow(networks.get(i % ready));
    }

    private static double flow(Network network) {
        return NetworkSolver.solve(network).flow_m3s("L0");
    }

    static double share(int at) {
        return 1 + 0.1 * (at % VARIED) / VARIED;
    }

    private static double run(IntToDoubleFunction once, int count) {
        double sum = 0;
        for (int i = 0; i < count; i++) {
            sum += once.applyAsDouble(i);
        }
        return sum;
    }

    private static double memory_MB(Path file) throws IOException {
        Network network = Case.read(file, 1).network();
        com.sun.management.ThreadMXBean thread = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        NetworkSolver.solve(network);
        long before = thread.getThreadAllocatedBytes(Thread.currentThread().getId());
        NetworkSolver.solve(network);
        return (thread.getThreadAllocatedBytes(Thread.currentThread().getId()) - before) / 1e6;
    }

    private static double apart_psi(Case one) {
        NetworkState state = NetworkSolver.solve(one.network());
        double apart = 0;
        for (Map.Entry<String, Double> head : one.heads_Pa().entrySet()) {
            apart = Math.max(apart, Math.abs(state.head_Pa(head.getKey()) - head.getValue()) / Case.PA_PER_PSI);
        }
        return apart;
    }
}
