package org.hosewright.acceptance.architecture;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;

/** The rooms of the house and the arrows between them; arrows only point down, and no package stands in a circle. */
final class RoomsTest {
    static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(place -> !place.contains("/test-classes/"))
            .importPackages("org.hosewright");

    @Test
    void arrowsBetweenRoomsHold() {
        layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("hydraulics")
                .definedBy("org.hosewright.hydraulics..")
                .layer("evidence")
                .definedBy("org.hosewright.evidence..")
                .layer("ground")
                .definedBy("org.hosewright.ground..")
                .layer("field")
                .definedBy("org.hosewright.field..")
                .layer("ledger")
                .definedBy("org.hosewright.ledger..")
                .layer("files")
                .definedBy("org.hosewright.files..")
                .layer("store")
                .definedBy("org.hosewright.store..")
                .layer("documents")
                .definedBy("org.hosewright.documents..")
                .layer("web")
                .definedBy("org.hosewright.web..")
                .layer("server")
                .definedBy("org.hosewright.server..")
                .layer("cli")
                .definedBy("org.hosewright.cli..")
                .whereLayer("hydraulics")
                .mayNotAccessAnyLayer()
                .whereLayer("evidence")
                .mayOnlyAccessLayers("hydraulics")
                .whereLayer("ground")
                .mayOnlyAccessLayers("hydraulics")
                .whereLayer("field")
                .mayOnlyAccessLayers("hydraulics", "evidence")
                .whereLayer("ledger")
                .mayOnlyAccessLayers("hydraulics", "evidence", "ground")
                .whereLayer("files")
                .mayOnlyAccessLayers("hydraulics", "evidence", "ground", "ledger")
                .whereLayer("store")
                .mayOnlyAccessLayers("hydraulics", "evidence", "ground", "ledger", "files")
                .whereLayer("documents")
                .mayOnlyAccessLayers("hydraulics", "evidence", "ground", "ledger")
                .whereLayer("web")
                .mayNotAccessAnyLayer()
                .whereLayer("server")
                .mayOnlyAccessLayers("hydraulics", "evidence", "ground", "ledger", "documents", "files", "web")
                .whereLayer("cli")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("store")
                .mayOnlyBeAccessedByLayers("cli")
                .withOptionalLayers(true)
                .check(HOUSE);
    }

    @Test
    void packagesFreeOfCyclesHold() {
        slices().matching("org.hosewright.(**)").should().beFreeOfCycles().check(HOUSE);
    }
}
