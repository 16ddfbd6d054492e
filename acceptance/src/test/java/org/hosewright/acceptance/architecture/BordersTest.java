package org.hosewright.acceptance.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaModifier.FINAL;
import static com.tngtech.archunit.core.domain.JavaModifier.SYNTHETIC;
import static com.tngtech.archunit.lang.conditions.ArchConditions.have;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static org.hosewright.acceptance.architecture.RoomsTest.HOUSE;

import com.tngtech.archunit.core.domain.JavaMethod;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A library's types stop inside the room that uses it, and names are nouns of the trade. */
final class BordersTest {
    private static final String[] NOT_NOUNS_OF_THE_TRADE = Stream.of(
                    "util", "utils", "impl", "service", "model", "dto", "helper", "common")
            .map(word -> ".." + word + "..")
            .toArray(String[]::new);

    @Test
    void librariesInTheirRoomsHold() {
        stay(List.of("store"), "java.sql..", "org.jdbi..", "org.flywaydb..", "com.zaxxer..", "org.sqlite..");
        stay(List.of("ground"), "net.sf.geographiclib..");
        stay(List.of("field"), "org.teavm..");
        stay(List.of("files"), "org.snakeyaml..", "org.apache.commons.csv..", "io.jenetics..");
        stay(List.of("files", "server", "store"), "com.fasterxml..");
        stay(List.of("documents"), "com.openhtmltopdf..");
        stay(List.of("documents", "web.build"), "org.apache.pdfbox..");
        stay(List.of("server"), "io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..");
        stay(List.of("cli"), "picocli..");
    }

    @Test
    void namesFromTheTradeHold() {
        noClasses().should().resideInAnyPackage(NOT_NOUNS_OF_THE_TRADE).check(HOUSE);
        noClasses()
                .should()
                .haveNameMatching(".*(Impl|Manager|Helper|Utils?|Service|Dto)")
                .check(HOUSE);
    }

    @Test
    void classesFinalOrSealedHold() {
        classes()
                .that()
                .areTopLevelClasses()
                .and()
                .areNotInterfaces()
                .and(describe("are not sealed", type -> !type.reflect().isSealed()))
                .should()
                .haveModifier(FINAL)
                .because("nothing is inherited to share code")
                .check(HOUSE);
    }

    @Test
    void atMostFiveParametersHold() {
        noMethods()
                .that(describe(
                        "are written by hand", method -> !method.getModifiers().contains(SYNTHETIC)))
                .should(have(describe("more than five parameters", BordersTest::isLong)))
                .check(HOUSE);
    }

    private static boolean isLong(JavaMethod method) {
        return method.getRawParameterTypes().size() > 5;
    }

    private static void stay(List<String> rooms, String... library) {
        var inside = rooms.stream().map(room -> "org.hosewright." + room + "..").toArray(String[]::new);
        noClasses()
                .that()
                .resideOutsideOfPackages(inside)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(library)
                .because("its types stop inside " + rooms)
                .check(HOUSE);
    }
}
