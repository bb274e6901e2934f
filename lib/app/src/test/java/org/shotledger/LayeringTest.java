package org.shotledger;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.toSet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the arrows between all rooms of all modules, as {@code rooms.csv} and each {@code package-info} state them. */
class LayeringTest {
    private static final String OURS = "org.shotledger.";
    private static final Pattern STATED = Pattern.compile("\\{@code ([a-z./]+)}");

    /** The JDK; {@code javax.measure} is a library although its name does not say so. */
    private static final Pattern JDK =
            Pattern.compile("(java|jdk|com\\.sun|org\\.w3c\\.dom|org\\.xml\\.sax|javax\\.(?!measure\\.)\\w+)\\..*");

    private static final List<Room> ROOMS = Room.all();

    private static final JavaClasses CLASSES = Imported.MAIN;

    static List<Room> rooms() {
        return ROOMS;
    }

    @Test
    void everyRoomIsListedOnce() {
        Set<String> found = CLASSES.stream().map(c -> room(c.getPackageName())).collect(toSet());
        assertEquals(found, ROOMS.stream().map(Room::name).collect(toSet()), "rooms.csv and the packages there are");
        assertEquals(found.size(), ROOMS.size(), "a room is listed twice");
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aRoomImportsOnlyWhatItMay(Room room) {
        ArchRuleDefinition.classes()
                .that(describe("stand in " + room, c -> room(c.getPackageName()).equals(room.name())))
                .should()
                .onlyDependOnClassesThat(describe("rooms.csv allows for " + room, c -> mayUse(room, c)))
                .check(CLASSES);
    }

    private static boolean mayUse(Room room, JavaClass used) {
        JavaClass type = used.getBaseComponentType();
        if (type.isPrimitive() || JDK.matcher(type.getName()).matches()) {
            return true;
        }
        if (!type.getName().startsWith(OURS)) {
            return room.mayImportLibrary(type.getName());
        }
        String other = room(type.getPackageName());
        return ROOMS.stream().anyMatch(r -> r.name().equals(other) && room.mayImport(r));
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void thePackageInfoStatesTheSame(Room room) throws IOException {
        Path file = Path.of("..", room.module(), "src/main/java/org/shotledger", room.name(), "package-info.java");
        String text = Files.readString(file);
        int start = text.indexOf("Allowed imports:");
        assertTrue(start >= 0, file + " does not say \"Allowed imports:\"");
        Set<String> stated = new TreeSet<>();
        STATED.matcher(text.substring(start)).results().forEach(name -> stated.add(name.group(1)));
        assertEquals(room.stated(), stated, file.toString());
    }

    @ParameterizedTest
    @MethodSource("modules")
    void theCoverageOfAModuleCountsAllItsRooms(String module) throws IOException {
        String pom = Files.readString(Path.of("..", module, "pom.xml"));
        Set<String> counted = Pattern.compile("(?:<coverage.classes>|:)org\\.shotledger\\.(\\w+)\\.\\*")
                .matcher(pom)
                .results()
                .map(name -> name.group(1))
                .collect(toSet());
        Set<String> rooms = ROOMS.stream()
                .filter(room -> room.module().equals(module))
                .map(Room::name)
                .collect(toSet());
        assertTrue(counted.isEmpty() || counted.equals(rooms), "counted " + counted + " of " + rooms);
    }

    /** An engine and a bottle both have a cylinder and a charge, and the trade calls them so. */
    @Test
    void noOtherPublicNameStandsInTwoRooms() {
        Set<String> seen = new TreeSet<>();
        Set<String> twice = CLASSES.stream()
                .filter(c -> c.isTopLevelClass() && c.getModifiers().contains(JavaModifier.PUBLIC))
                .map(JavaClass::getSimpleName)
                .filter(name -> !seen.add(name))
                .collect(toSet());
        assertEquals(Set.of("Cylinder", "Charge"), twice);
    }

    @Test
    void noTwoRoomsLeanOnEachOther() {
        slices().matching("org.shotledger.(*)..").should().beFreeOfCycles().check(CLASSES);
    }

    @ParameterizedTest
    @MethodSource("modules")
    void noTwoModulesLeanOnEachOther(String module) {
        assertTrue(!reach(module).contains(module), module + " leans on itself by way of " + reach(module));
    }

    /** The kernel serves any library, and the physics serves any program. */
    @Test
    void kernelAndPhysicsKnowNothingOfTheProduct() {
        assertEquals(Set.of(), reach("physics"));
        assertEquals(Set.of("files"), reach("kernel"));
    }

    @Test
    void physicsKnowsNoFiles() {
        ArchRuleDefinition.noClasses()
                .that(describe(
                        "are physics",
                        c -> ROOMS.stream()
                                .anyMatch(r ->
                                        r.module().equals("physics") && r.name().equals(room(c.getPackageName())))))
                .should()
                .dependOnClassesThat()
                .haveNameMatching("java\\.nio\\.file\\..*|java\\.io\\.(File|Random).*")
                .check(CLASSES);
    }

    static Set<String> modules() {
        return ROOMS.stream().map(Room::module).collect(toSet());
    }

    /** Every module that the rooms of this one may import, directly or by way of others. */
    private static Set<String> reach(String module) {
        Set<String> reached = new TreeSet<>(next(module));
        while (reached.addAll(reached.stream().flatMap(m -> next(m).stream()).collect(toSet()))) {}
        return reached;
    }

    private static Set<String> next(String module) {
        Stream<Room> own = ROOMS.stream().filter(r -> r.module().equals(module));
        return own.flatMap(r -> ROOMS.stream().filter(r::mayImport))
                .map(Room::module)
                .filter(m -> !m.equals(module))
                .collect(toSet());
    }

    private static String room(String packageName) {
        return packageName.substring(OURS.length()).replaceFirst("\\..*", "");
    }
}
