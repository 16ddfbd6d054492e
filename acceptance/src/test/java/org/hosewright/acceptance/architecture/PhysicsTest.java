package org.hosewright.acceptance.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.hosewright.acceptance.architecture.RoomsTest.HOUSE;

import com.tngtech.archunit.core.domain.JavaAccess;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The physics runs on the Java machine and in the browser alike, and gives the same answer on any machine and day. */
final class PhysicsTest {
    private static final String[] PHYSICS = {"org.hosewright.hydraulics..", "org.hosewright.evidence.."};

    private static final String[] OUTER_WORLD = {
        "java.time..",
        "java.io..",
        "java.nio..",
        "java.net..",
        "java.text..",
        "java.sql..",
        "java.lang.reflect..",
        "java.util.concurrent..",
        "org.slf4j.."
    };

    /** Missing, inexact or different where the physics runs as JavaScript. */
    private static final Set<String> INEXACT =
            Set.of("fma", "hypot", "log1p", "expm1", "log10", "rint", "tanh", "random");

    /** Results that hang on the machine's language or clock. */
    private static final Set<String> UNREPEATABLE =
            Set.of("format", "formatted", "toLowerCase", "toUpperCase", "currentTimeMillis", "nanoTime");

    @Test
    void noClockFilesLocaleOrReflectionHolds() {
        noClasses()
                .that()
                .resideInAnyPackage(PHYSICS)
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(OUTER_WORLD)
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Locale")
                .check(HOUSE);
    }

    @Test
    void noHashOrderHolds() {
        noClasses()
                .that()
                .resideInAnyPackage(PHYSICS)
                .should()
                .dependOnClassesThat()
                .haveNameMatching("java\\.util\\.Hash(Map|Set)")
                .because("their order differs between the two targets; LinkedHashMap and TreeMap keep theirs")
                .check(HOUSE);
    }

    @Test
    void onlyExactAndRepeatableCallsHold() {
        noClasses()
                .that()
                .resideInAnyPackage(PHYSICS)
                .should()
                .accessTargetWhere(describe("it is inexact on one of the two targets", PhysicsTest::isInexact))
                .orShould()
                .accessTargetWhere(describe("it hangs on the language or the clock", PhysicsTest::isUnrepeatable))
                .orShould()
                .callConstructor(Random.class)
                .check(HOUSE);
    }

    private static boolean isInexact(JavaAccess<?> access) {
        return access.getTargetOwner().isEquivalentTo(Math.class)
                && INEXACT.contains(access.getTarget().getName());
    }

    private static boolean isUnrepeatable(JavaAccess<?> access) {
        var owner = access.getTargetOwner();
        return (owner.isEquivalentTo(String.class) || owner.isEquivalentTo(System.class))
                && UNREPEATABLE.contains(access.getTarget().getName());
    }
}
