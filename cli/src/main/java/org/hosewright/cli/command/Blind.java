package org.hosewright.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.concurrent.Callable;
import org.hosewright.evidence.trial.BlindOrder;
import org.hosewright.evidence.trial.SampleSize;
import org.hosewright.files.plain.NewFile;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.QuantityText;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The sheet of a blind trial of hoses: how many re-lays, in which order, and the key put away in a file. */
@Command(
        name = "blind",
        mixinStandardHelpOptions = true,
        description =
                "Plan a blind trial: re-lays of each kind, the order of laying by label, the key in a file of its own.")
public final class Blind implements Callable<Integer> {
    @Parameters(arity = "2..12", paramLabel = "KIND", description = "Names of what is compared, two or more.")
    private List<String> kinds;

    @Option(
            names = "--find",
            paramLabel = "\"5 psi\"",
            required = true,
            description = "The difference over the trial's length that is to be found.")
    private String find;

    @Option(
            names = "--scatter",
            paramLabel = "\"3 psi\"",
            required = true,
            description = "How far re-lays of one hose differ: a standard deviation.")
    private String scatter;

    @Option(
            names = "--key",
            paramLabel = "KEY.csv",
            required = true,
            description = "A new file for the key, for the one who lays; those who read do not open it.")
    private Path key;

    @Option(names = "--seed", description = "Draws the same order again. Drawn afresh if left out.")
    private @Nullable Long seed;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        NewFile.check(key, false);
        double power = SampleSize.POWER;
        var size = new SampleSize(kinds.size(), pressure("--find", find), pressure("--scatter", scatter), power);
        int relays = size.find()
                .orElseThrow(() -> new InvalidInput(
                        "--find", find, "a difference that some number of re-lays can find beside this scatter", ""));
        BlindOrder drawn = BlindOrder.of(kinds, relays, seed == null ? new SecureRandom().nextLong() : seed);
        NewFile.write(key, text(drawn).getBytes(StandardCharsets.UTF_8), false);
        print(drawn, relays);
        return Exit.DONE.status();
    }

    private void print(BlindOrder drawn, int relays) {
        var out = spec.commandLine().getOut();
        out.println(relays + " re-lays of each find a difference of " + find
                + " four times in five, where re-lays of one hose differ by " + scatter + ".");
        out.println();
        out.println(
                "Lay in this order, each re-lay anew from the bed, and read two or three times while it is charged:");
        List<String> order = drawn.order();
        for (int i = 0; i < order.size(); i++) {
            out.println("  lay " + (i + 1) + "   " + order.get(i));
        }
        out.println();
        out.println("The key is in " + key + ": for the one who lays, not for those who read.");
        out.flush();
    }

    private static String text(BlindOrder drawn) {
        var text = new StringBuilder("label,kind\n");
        drawn.key()
                .forEach((label, kind) -> text.append(label)
                        .append(",\"")
                        .append(kind.replace("\"", "\"\""))
                        .append("\"\n"));
        return text.toString();
    }

    private static double pressure(String option, String text) {
        return OptionText.read(option, text, QuantityText::pressure).pascals();
    }
}
