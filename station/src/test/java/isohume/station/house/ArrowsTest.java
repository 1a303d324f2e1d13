// SPDX-License-Identifier: Apache-2.0
package isohume.station.house;

import static com.tngtech.archunit.lang.conditions.ArchConditions.never;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.properties.HasAnnotations;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The arrows between the rooms of the house, as drawn in {@code ARCHITECTURE.md}, read from the class files. */
class ArrowsTest {
    private static final Map<String, List<String>> ARROWS = Map.ofEntries(
            entry("quantity", List.of()),
            entry("moistair", List.of("quantity")),
            entry("uncertainty", List.of()),
            entry("journal", List.of()),
            entry("device", List.of("quantity")),
            entry("simulator", List.of("moistair", "quantity", "device")),
            entry("run", List.of("device", "journal", "moistair", "uncertainty", "quantity")),
            entry("result", List.of("moistair", "uncertainty", "journal", "quantity")),
            entry("certificate", List.of("result", "moistair", "uncertainty", "journal", "quantity")),
            entry(
                    "station",
                    List.of(
                            "quantity",
                            "moistair",
                            "uncertainty",
                            "journal",
                            "device",
                            "simulator",
                            "run",
                            "result",
                            "certificate")));

    private static final JavaClasses HOUSE = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("isohume");

    @Test
    void every_room_is_seen_and_has_its_arrows() {
        Set<String> rooms = HOUSE.stream().map(ArrowsTest::room).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(ARROWS.keySet()), rooms);
    }

    @Test
    void there_are_no_arrows_but_those_listed() {
        classes().should(followTheArrows()).check(HOUSE);
    }

    @Test
    void packages_form_no_ring() {
        slices().matching("isohume.(**)").should().beFreeOfCycles().check(HOUSE);
    }

    @Test
    void pages_and_their_framework_are_known_to_the_station_only() {
        noClasses()
                .that()
                .resideOutsideOfPackage("isohume.station..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "io.quarkus..",
                        "io.smallrye..",
                        "io.vertx..",
                        "jakarta..",
                        "org.eclipse.microprofile..",
                        "org.jboss..",
                        "picocli..",
                        "com.sun.net.httpserver..")
                .check(HOUSE);
    }

    @Test
    void a_web_client_is_known_to_the_driver_for_web_devices_only() {
        noClasses()
                .that()
                .resideOutsideOfPackages("isohume.station..", "isohume.device.http..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.net.http..")
                .check(HOUSE);
    }

    @Test
    void sql_is_known_to_the_journal_only() {
        noClasses()
                .that()
                .resideOutsideOfPackage("isohume.journal..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..", "org.postgresql..")
                .check(HOUSE);
    }

    @Test
    void no_room_but_the_station_asks_the_machine_for_the_time_for_chance_or_for_settings() {
        classes()
                .that()
                .resideOutsideOfPackages("isohume.station..", "isohume.benchmarks..")
                .should(never(askTheMachine()))
                .check(HOUSE);
    }

    @Test
    void rooms_other_than_the_station_carry_no_framework_marks() {
        classes()
                .that()
                .resideOutsideOfPackage("isohume.station..")
                .should(carryPlainMarksOnly())
                .check(HOUSE);
    }

    private static String room(JavaClass of) {
        return of.getPackageName().split("\\.", -1)[1];
    }

    private static ArchCondition<JavaClass> followTheArrows() {
        return new ArchCondition<>("follow the arrows") {
            @Override
            public void check(JavaClass from, ConditionEvents events) {
                List<String> allowed = ARROWS.getOrDefault(room(from), List.of());
                from.getDirectDependenciesFromSelf().stream()
                        .filter(use -> use.getTargetClass().getPackageName().startsWith("isohume."))
                        .filter(use -> !room(use.getTargetClass()).equals(room(from)))
                        .filter(use -> !allowed.contains(room(use.getTargetClass())))
                        .forEach(use -> events.add(SimpleConditionEvent.violated(from, use.getDescription())));
            }
        };
    }

    private static ArchCondition<JavaClass> askTheMachine() {
        return new ArchCondition<>("ask the machine") {
            @Override
            public void check(JavaClass from, ConditionEvents events) {
                from.getAccessesFromSelf().stream()
                        .filter(ASKS)
                        .forEach(access -> events.add(SimpleConditionEvent.satisfied(from, access.getDescription())));
            }
        };
    }

    /** A call or a reference to it; {@code System.nanoTime}, which limits how long a wire is waited for, is none. */
    private static final DescribedPredicate<JavaAccess<?>> ASKS =
            DescribedPredicate.describe("asks the machine", ArrowsTest::asks);

    private static boolean asks(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String name = access.getTarget().getName();
        String signature = access.getTarget().getFullName();
        boolean handed = signature.contains("(java.time.Clock");
        return switch (owner) {
            case "java.lang.System" ->
                Set.of("currentTimeMillis", "getenv", "getProperty").contains(name);
            case "java.time.Clock" -> name.startsWith("system") || (name.startsWith("tick") && !handed);
            case "java.time.InstantSource" -> name.equals("system");
            case "java.lang.Math", "java.lang.StrictMath" -> name.equals("random");
            case "java.util.concurrent.ThreadLocalRandom" -> true;
            case "java.util.UUID" -> name.equals("randomUUID");
            case "java.util.Date", "java.util.Random" -> signature.endsWith("<init>()");
            default -> owner.startsWith("java.time.") && name.equals("now") && !handed;
        };
    }

    private static ArchCondition<JavaClass> carryPlainMarksOnly() {
        return new ArchCondition<>("carry marks of nullness, of unused results and of the language only") {
            @Override
            public void check(JavaClass from, ConditionEvents events) {
                Stream.<HasAnnotations<?>>concat(Stream.of(from), from.getMembers().stream())
                        .flatMap(marked -> marked.getAnnotations().stream())
                        .map(JavaAnnotation::getRawType)
                        .filter(mark -> !PLAIN.contains(mark.getPackageName())
                                && !mark.getName().equals(SHARABLE))
                        .forEach(mark -> events.add(
                                SimpleConditionEvent.violated(from, from.getName() + " carries " + mark.getName())));
            }
        };
    }

    /** Netty refuses a handler that serves more than one connection unless it says so with this. */
    private static final String SHARABLE = "io.netty.channel.ChannelHandler$Sharable";

    private static final Set<String> PLAIN =
            Set.of("java.lang", "org.jspecify.annotations", "com.google.errorprone.annotations");
}
