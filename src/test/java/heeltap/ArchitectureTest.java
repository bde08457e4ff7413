package heeltap;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.domain.properties.HasName;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures;
import com.tngtech.archunit.library.GeneralCodingRules;
import heeltap.quantity.Exact;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.NullMarked;

/** The table of packages and arrows in DEVELOPERS.md, held. */
@AnalyzeClasses(packages = "heeltap", importOptions = ArchitectureTest.NoTests.class)
class ArchitectureTest {
    /** Leaves out what was compiled to where this class stands, wherever a build puts its tests. */
    static final class NoTests implements ImportOption {
        private final String tests = ArchitectureTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .getPath();

        @Override
        public boolean includes(Location location) {
            return !location.contains(tests);
        }
    }

    /** Each package with those it may use. */
    private static final Map<String, List<String>> MAY_USE = new LinkedHashMap<>();

    static {
        MAY_USE.put("quantity", List.of());
        MAY_USE.put("source", List.of());
        MAY_USE.put("document", List.of("quantity"));
        MAY_USE.put("mixture", List.of("quantity"));
        MAY_USE.put("record", List.of("quantity", "source"));
        MAY_USE.put("sheet", List.of("source"));
        MAY_USE.put("load", List.of("record", "quantity", "source"));
        MAY_USE.put("match", List.of("record", "quantity", "source"));
        MAY_USE.put("cost", List.of("match", "mixture", "record", "quantity", "source"));
        MAY_USE.put("menu", List.of("cost", "match", "mixture", "record", "quantity", "source"));
        MAY_USE.put("stock", List.of("cost", "match", "mixture", "record", "quantity", "source"));
        MAY_USE.put("pricing", List.of("menu", "cost", "match", "mixture", "record", "quantity", "source"));
        MAY_USE.put(
                "review",
                List.of(
                        "document",
                        "pricing",
                        "stock",
                        "menu",
                        "cost",
                        "match",
                        "mixture",
                        "load",
                        "record",
                        "quantity",
                        "source"));
        MAY_USE.put("report", List.of("document", "quantity", "source"));
        MAY_USE.put(
                "cli",
                List.of(
                        "report",
                        "review",
                        "document",
                        "sheet",
                        "load",
                        "pricing",
                        "stock",
                        "menu",
                        "cost",
                        "match",
                        "mixture",
                        "record",
                        "quantity",
                        "source"));
    }

    /** Packages where a figure could be money: no binary floating-point number. */
    private static final String[] EXACT = {
        "heeltap.quantity..",
        "heeltap.source..",
        "heeltap.record..",
        "heeltap.load..",
        "heeltap.match..",
        "heeltap.stock..",
        "heeltap.document.."
    };

    @ArchTest
    static final ArchRule arrows = arrows();

    private static ArchRule arrows() {
        Architectures.LayeredArchitecture layers =
                Architectures.layeredArchitecture().consideringOnlyDependenciesInAnyPackage("heeltap..");
        for (String layer : MAY_USE.keySet()) {
            layers = layers.layer(layer).definedBy("heeltap." + layer + "..");
        }
        for (Map.Entry<String, List<String>> entry : MAY_USE.entrySet()) {
            layers = entry.getValue().isEmpty()
                    ? layers.whereLayer(entry.getKey()).mayNotAccessAnyLayer()
                    : layers.whereLayer(entry.getKey())
                            .mayOnlyAccessLayers(entry.getValue().toArray(String[]::new));
        }
        return layers.withOptionalLayers(true).ensureAllClassesAreContainedInArchitecture();
    }

    @ArchTest
    static final ArchRule noCycles = slices().matching("heeltap.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule noDoubleFields = fields().that()
            .areDeclaredInClassesThat()
            .resideInAnyPackage(EXACT)
            .should()
            .notHaveRawType(double.class);

    @ArchTest
    static final ArchRule noDoubleReturns = methods()
            .that()
            .areDeclaredInClassesThat()
            .resideInAnyPackage(EXACT)
            .and()
            .areDeclaredInClassesThat()
            .doNotBelongToAnyOf(Exact.class)
            .should()
            .notHaveRawReturnType(double.class);

    @ArchTest
    static final ArchRule noBinaryDecimals =
            noClasses().that().doNotBelongToAnyOf(Exact.class).should().callConstructor(BigDecimal.class, double.class);

    @ArchTest
    static final ArchRule divisionOnlyInQuantity = noClasses()
            .that()
            .resideOutsideOfPackage("heeltap.quantity..")
            .should()
            .callMethodWhere(JavaCall.Predicates.target(HasName.Predicates.name("divide"))
                    .and(JavaCall.Predicates.target(
                            com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner(
                                    com.tngtech.archunit.core.domain.JavaClass.Predicates.type(BigDecimal.class)))));

    @ArchTest
    static final ArchRule noClock = noClasses()
            .that()
            .resideOutsideOfPackage("heeltap.cli..")
            .should()
            .callMethodWhere(JavaCall.Predicates.target(HasName.Predicates.name("now"))
                    .and(JavaCall.Predicates.target(
                            com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner(
                                    com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage(
                                            "java.time..")))))
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(java.util.Locale.class, "getDefault")
            .orShould()
            .callMethod(java.time.ZoneId.class, "systemDefault");

    @ArchTest
    static final ArchRule streamsOnlyInCli = noClasses()
            .that()
            .resideOutsideOfPackage("heeltap.cli..")
            .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS);

    @ArchTest
    static final ArchRule poiAndCsvOnlyAtTheEdges = noClasses()
            .that()
            .resideOutsideOfPackages("heeltap.sheet..", "heeltap.report..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.apache.poi..", "org.apache.commons.csv..");

    @ArchTest
    static final ArchRule pdfAndChartsOnlyInReport = noClasses()
            .that()
            .resideOutsideOfPackage("heeltap.report..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("com.lowagie..", "org.jfree..", "java.awt..");

    @ArchTest
    static void everyPackageIsNullMarkedAndNamed(JavaClasses classes) {
        var packages = classes.getPackage("heeltap").getSubpackages();
        assertThat(packages.stream().map(JavaPackage::getRelativeName)).containsAll(MAY_USE.keySet());
        assertThat(packages.stream()
                        .filter(p -> !p.isAnnotatedWith(NullMarked.class))
                        .map(JavaPackage::getName))
                .isEmpty();
    }
}
