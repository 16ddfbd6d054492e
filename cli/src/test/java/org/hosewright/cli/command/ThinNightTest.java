package org.hosewright.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nights with too little in them, or with what cannot be: a sentence says what is missing or wrong. */
final class ThinNightTest {
    private static final String HEAD =
            "reading,discharge,hose,length [ft],nozzle,pump [psi],tip [psi],flow [gpm],pump gauge,tip gauge,meter\n";
    private static final String WITH = ",gauge-a,gauge-b,meter-1\n";

    @TempDir
    private Path folder;

    private Ran drill(String csv) throws IOException {
        Path file = Files.writeString(folder.resolve("thin.readings.csv"), csv);
        Path kit = Path.of(System.getProperty("hosewright.root"), "examples", "drill-night.kit.yaml");
        return Ran.of("drill", file.toString(), "--kit", kit.toString());
    }

    private static String row(int reading, int length_ft, double pump_psi, double tip_psi, double flow_gpm) {
        return reading + ",crosslay-1,attack-175," + length_ft + ",seven-eighths," + pump_psi + "," + tip_psi + ","
                + flow_gpm + WITH;
    }

    @Test
    void oneReadingSaysWhichOneMoreIsNeededHolds() throws Exception {
        Ran ran = drill(HEAD + row(1, 350, 138, 50, 171));
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains(
                        "loss of attack-175: the lengths flown are too alike to tell it from the piping of crosslay-1")
                .contains("what would settle it: a reading on a line at least twice as long, or half as long")
                .doesNotContain("hose      attack-175");
    }

    @Test
    void threeReadingsAtOnePointTellNoMoreHold() throws Exception {
        Ran ran = drill(HEAD + row(1, 350, 138, 50, 171) + row(2, 350, 138, 50, 170) + row(3, 350, 139, 50, 171));
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains("the lengths flown are too alike")
                .contains("needed at 350 ft")
                .doesNotContain("hose      attack-175");
    }

    @Test
    void pressuresInAnotherUnitThanTheHeadSaysRefused() throws Exception {
        Ran ran = drill(HEAD + row(1, 350, 951, 345, 171));
        assertThat(ran.status()).isNotZero();
        assertThat(ran.err())
                .contains("reading 1, pump [psi]", "gauge-a cannot be '951.0'", "at most its full scale, 400 psi");
    }

    @Test
    void neitherTipNorFlowRefused() throws Exception {
        Ran ran = drill("""
                reading,discharge,hose,length [ft],nozzle,pump [psi],tip [psi]
                1,crosslay-1,attack-175,350,seven-eighths,138,
                """);
        assertThat(ran.status()).isNotZero();
        assertThat(ran.err()).contains("tip", "at least one of the two");
    }

    @Test
    void instrumentsThatNobodyNamedAreSaidHold() throws Exception {
        Ran ran = drill("""
                reading,discharge,hose,length [ft],nozzle,pump [psi],tip [psi],flow [gpm]
                1,crosslay-1,attack-175,150,seven-eighths,72,40,152
                2,crosslay-1,attack-175,550,seven-eighths,150,40,151
                """);
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains("pump gauge: not named, taken as good within 4 psi")
                .contains("tip gauge: not named")
                .contains("flow meter: not named");
    }

    @Test
    void aNightThatNoHoseCouldGiveHasNoNumbersHolds() throws Exception {
        StringBuilder rows = new StringBuilder(HEAD);
        int reading = 0;
        for (int length_ft : new int[] {150, 350, 550, 750}) {
            for (int tip_psi : new int[] {40, 50}) {
                rows.append(row(++reading, length_ft, tip_psi, tip_psi, tip_psi == 40 ? 152 : 170));
            }
        }
        Ran ran = drill(rows.toString());
        assertThat(ran.status()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains("every number of this night: ")
                .contains("the readings scatter more than six times as much as their instruments should")
                .doesNotContain("What the night shows", "Pump pressure needed", "walk the line", "expected");
    }
}
