package org.hosewright.files.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.hosewright.hydraulics.equipment.Hose;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.HoseLoss;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.Ratio;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.Couplings;
import org.hosewright.ledger.kit.FlownRange;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.HoseRecord;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.kit.NightRecord;
import org.junit.jupiter.api.Test;

/** Kits with numbers that nobody typed: every bit of them is in the text that is written. */
class AnyKitTest {
    private static final long SEED = 514_229;
    private static final int ROUNDS = 300;

    @Test
    void writtenKitReadsBackExactlyHolds() {
        Random random = new Random(SEED);
        Kit whole = KitDocument.of(WholeKit.TEXT, "kit.yaml").kit();
        for (int round = 0; round < ROUNDS; round++) {
            Kit kit = any(whole, random);
            String text = KitText.write(kit);
            assertThat(KitDocument.of(text, "written").kit())
                    .as("seed %d, round %d:%n%s", SEED, round, text)
                    .isEqualTo(kit);
        }
    }

    private static Kit any(Kit whole, Random random) {
        HoseRecord record = whole.hoses().get("attack-175");
        double section_m = 5 + 50 * random.nextDouble();
        Hose hose = new Hose(
                "attack-175",
                new Length(0.02 + 0.1 * random.nextDouble()),
                new Length(section_m),
                Known.of(new HoseLoss(1e7 * Math.exp(random.nextGaussian())), new HoseLoss(1e5 * random.nextDouble())),
                Optional.of(new Pressure(1e6 * (1 + random.nextDouble()))));
        HosePackage any = new HosePackage(
                "any",
                "engine-41",
                "crosslay-1",
                List.of(
                        new Stretch("attack-175", new Length((1 + random.nextInt(60)) * section_m)),
                        new Stretch("leader-3", new Length(20 + 300 * random.nextDouble()))),
                "seven-eighths",
                "",
                whole.packages().get("crosslay-1-200").crew(),
                Optional.of(new Flow(0.02 * (1 + random.nextDouble()))),
                Optional.of(new Flow(0.02 * random.nextDouble() + 1e-6)),
                Optional.of(new Pressure(1e6 * random.nextDouble() + 1)));
        NightRecord night = new NightRecord(
                Optional.empty(),
                whole.evidence().get("drill-night").readings(),
                Map.of("attack-175/crosslay-1", 2 * random.nextDouble() - 1),
                Optional.of(new Length(1000 * random.nextDouble() + 1)),
                Map.of(
                        "attack-175",
                        new FlownRange(
                                new Flow(0.01 * random.nextDouble()), new Flow(0.01 * (1 + random.nextDouble())))),
                Map.of(
                        "seven-eighths",
                        Known.of(new Ratio(0.6 + random.nextDouble()), new Ratio(0.05 * random.nextDouble()))));
        return new Kit(
                "Vale \"" + (char) (0x100 + random.nextInt(0x200)) + ": #1, 'x' " + random.nextInt(),
                whole.zone(),
                random.nextBoolean() ? UnitSystem.US : UnitSystem.SI,
                whole.crewReaction(),
                Map.of(
                        "attack-175",
                        new HoseRecord(
                                hose, record.basis(), record.tested(), record.made(), record.coupling(), record.type()),
                        "leader-3",
                        whole.hoses().get("leader-3")),
                whole.nozzles(),
                whole.appliances(),
                whole.engines(),
                whole.instruments(),
                Map.of("any", any),
                whole.rule(),
                Optional.of(new Length(100 * random.nextDouble() + 1)),
                Map.of("drill-night", night),
                Couplings.NONE,
                Optional.of(
                        random.nextBoolean()
                                ? Period.ofMonths(1 + random.nextInt(60))
                                : Period.ofYears(1 + random.nextInt(10))));
    }
}
