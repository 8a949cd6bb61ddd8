package gudgeon.bench;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import gudgeon.mechanics.upward.LooksUp;
import org.junit.jupiter.api.Test;

/** Each storey stands only on those below it. Maven refuses most of it already: a module lacks what it must not use. */
class StoreysTest {
    private static final ArchRule DOWNWARD = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("gudgeon..")
            .layer("mechanics")
            .definedBy("gudgeon.mechanics..")
            .layer("rebuild")
            .definedBy("gudgeon.rebuild..")
            .layer("store")
            .definedBy("gudgeon.store..")
            .layer("bench")
            .definedBy("gudgeon.bench..")
            .whereLayer("bench")
            .mayNotBeAccessedByAnyLayer()
            .whereLayer("store")
            .mayOnlyBeAccessedByLayers("bench")
            .whereLayer("rebuild")
            .mayOnlyBeAccessedByLayers("store", "bench")
            .whereLayer("mechanics")
            .mayOnlyBeAccessedByLayers("rebuild", "store", "bench");

    private static final ArchRule NUMBERS_ONLY = ArchRuleDefinition.noClasses()
            .that()
            .resideInAPackage("gudgeon.mechanics..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.snakeyaml..", "com.fasterxml..", "io.javalin..", "java.nio.file..", "java.io..");

    private static final ArchRule NO_FRAMEWORKS_BELOW = ArchRuleDefinition.noClasses()
            .that()
            .resideInAPackage("gudgeon.rebuild..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "com.fasterxml..", "io.javalin..", "picocli..", "java.nio.file..", "java.sql..", "org.jdbi..");

    private static final ArchRule NO_PAGES_IN_STORE = ArchRuleDefinition.noClasses()
            .that()
            .resideInAPackage("gudgeon.store..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.javalin..", "gg.jte..", "picocli..");

    /** Nothing is fetched: the program is asked, and asks nobody. */
    private static final ArchRule ASKS_NOBODY = ArchRuleDefinition.noClasses()
            .that()
            .resideInAPackage("gudgeon..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.net.http..")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(
                    java.net.Socket.class,
                    java.net.URLConnection.class,
                    java.net.DatagramSocket.class,
                    java.nio.channels.SocketChannel.class)
            .orShould()
            .callMethod(java.net.URL.class, "openStream")
            .orShould()
            .callMethod(java.net.URL.class, "openConnection");

    private static JavaClasses product() {
        return new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("gudgeon");
    }

    @Test
    void eachStoreyStandsOnlyOnThoseBelow() {
        JavaClasses product = product();
        assertThat(product.size()).isGreaterThan(100);
        DOWNWARD.check(product);
        NUMBERS_ONLY.check(product);
        NO_FRAMEWORKS_BELOW.check(product);
        NO_PAGES_IN_STORE.check(product);
        ASKS_NOBODY.check(product);
    }

    @Test
    void everyPackageIsARoomOfAStorey() {
        assertThat(product().stream().map(type -> type.getPackageName()).distinct())
                .allMatch(name -> name.matches("gudgeon\\.(mechanics|rebuild|store|bench)\\.[a-z]+(\\.[a-z]+)?"));
    }

    @Test
    void theRuleCanFail() {
        JavaClasses wrong = new ClassFileImporter().importClasses(LooksUp.class, StoreysTest.class);
        assertThat(DOWNWARD.evaluate(wrong).hasViolation()).isTrue();
        assertThat(NUMBERS_ONLY.evaluate(wrong).hasViolation()).isTrue();
    }
}
