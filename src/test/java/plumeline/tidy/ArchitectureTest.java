package plumeline.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/// Holds the arrows between the rooms, the homes of the libraries and the bans, on the compiled classes.
final class ArchitectureTest {
    /// Libraries and the rooms that may know them. A library that is not here may be known by none.
    private static final Map<String, Set<String>> HOMES = Map.ofEntries(
            Map.entry("tools.jackson.", Set.of("solve", "cut", "cli")),
            Map.entry("org.snakeyaml.", Set.of("text")),
            Map.entry("org.locationtech.jts.", Set.of("sight")),
            Map.entry("org.hipparchus.", Set.of("search")),
            Map.entry("com.openhtmltopdf.", Set.of("press")),
            Map.entry("org.apache.pdfbox.", Set.of("press")),
            Map.entry("org.apache.fontbox.", Set.of("press")),
            Map.entry("com.google.zxing.", Set.of("sheet")),
            Map.entry("com.ibm.icu.", Set.of("press")),
            Map.entry("org.w3c.dom.", Set.of("press")),
            Map.entry("org.xml.sax.", Set.of("press")),
            Map.entry("javax.xml.parsers.", Set.of("press")),
            Map.entry("javax.imageio.", Set.of("art", "press")),
            Map.entry("com.github.weisj.jsvg.", Set.of("art")),
            Map.entry("org.bytedeco.", Set.of("clip")));

    /// What physics may know of `quantity`: exact rates and ratios.
    private static final Set<String> EXACT = Set.of("FrameRate", "Ratio");

    /// The rooms that talk to whoever types.
    private static final Set<String> TALKING = Set.of("cli", "desk");

    private static JavaClasses classes = new ClassFileImporter().importClasses();

    @BeforeAll
    static void importClasses() {
        classes = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("plumeline");
        assertThat(classes).as("compiled classes").hasSizeGreaterThan(20);
    }

    @Test
    void everyRoom_isDrawnInTheArchitecture() {
        var unknown = new TreeSet<String>();
        for (JavaClass each : classes) {
            if (!Rooms.isKnown(room(each))) {
                unknown.add(each.getName() + " lies in no room that is drawn");
            }
        }
        assertThat(unknown).isEmpty();
    }

    @Test
    void arrows_haveNoCycle() {
        for (String room : Rooms.listAll()) {
            assertThat(Rooms.reachable(room)).as("rooms that %s may use", room).doesNotContain(room);
        }
    }

    @Test
    void rooms_useOnlyRoomsAtTheirArrows() {
        var found = new TreeSet<String>();
        for (JavaClass each : classes) {
            Set<String> allowed = Rooms.reachable(room(each));
            for (JavaClass target : targets(each)) {
                String other = room(target);
                if (isOurs(target) && !other.equals(room(each)) && !allowed.contains(other)) {
                    found.add(each.getName() + " uses " + target.getName() + "; " + room(each) + " may use " + allowed);
                }
            }
        }
        assertThat(found).isEmpty();
    }

    /// A room may be divided into packages by subject: its own may know those below it, and those know neither it nor
    /// each other; what they share is a room of its own.
    @Test
    void packagesBelowARoom_knowNeitherItNorEachOther() {
        var found = new TreeSet<String>();
        for (JavaClass each : classes) {
            String own = each.getPackageName();
            boolean below = own.split("\\.").length > 2;
            for (JavaClass target : targets(each)) {
                String other = target.getPackageName();
                if (below && isOurs(target) && room(target).equals(room(each)) && !other.equals(own)) {
                    found.add(each.getName() + " uses " + target.getName());
                }
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void physics_knowsOfQuantityOnlyExactRatesAndRatios() {
        var found = new TreeSet<String>();
        for (JavaClass each : classes) {
            for (JavaClass target : targets(each)) {
                if (Rooms.PHYSICS.contains(room(each))
                        && isOurs(target)
                        && room(target).equals("quantity")
                        && !EXACT.contains(outermost(target).getSimpleName())) {
                    found.add(each.getName() + " uses " + target.getName());
                }
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void libraries_areKnownOnlyAtHome() {
        var found = new TreeSet<String>();
        for (JavaClass each : classes) {
            for (JavaClass target : targets(each)) {
                String name = target.getName();
                if (!isOurs(target) && !isOfTheLanguage(name) && !homes(name).contains(room(each))) {
                    found.add(each.getName() + " uses " + name + ", at home in " + homes(name));
                }
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void silentRooms_touchNeitherFilesNorClockNorEnvironmentNorLocale() {
        var found = new TreeSet<String>();
        for (JavaClass each : classes) {
            if (!Rooms.SILENT.contains(room(each))) {
                continue;
            }
            for (JavaClass target : targets(each)) {
                findBan(Bans.TYPES, target.getName())
                        .ifPresent(ban -> found.add(each.getName() + " uses " + target.getName() + ": " + ban.why()));
            }
            addBanned(each, Bans.MEMBERS, found);
        }
        assertThat(found).isEmpty();
    }

    @Test
    void onlyCliAndItsDesk_printOrEndTheProcess() {
        var found = new TreeSet<String>();
        for (JavaClass each : classes) {
            if (!TALKING.contains(room(each))) {
                addBanned(each, Bans.PRINTING_AND_EXITING, found);
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void classes_keepNoStateInStaticFields() {
        var found = new TreeSet<String>();
        for (JavaClass each : classes) {
            for (JavaField field : each.getFields()) {
                boolean changeable = field.getModifiers().contains(JavaModifier.STATIC)
                        && !field.getModifiers().contains(JavaModifier.FINAL);
                if (changeable && !field.getModifiers().contains(JavaModifier.SYNTHETIC)) {
                    found.add(field.getFullName() + " is static and can change");
                }
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void classes_areFinal() {
        var found = new TreeSet<String>();
        for (JavaClass each : classes) {
            boolean closed = each.isInterface()
                    || each.isEnum()
                    || each.isAnonymousClass()
                    || each.getModifiers().contains(JavaModifier.FINAL);
            if (!closed && !each.getSimpleName().equals("package-info")) {
                found.add(each.getName() + " is not final");
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void records_holdNoArrays() {
        var found = new TreeSet<String>();
        for (JavaClass each : classes) {
            for (JavaField field : each.getFields()) {
                boolean component = each.isRecord() && !field.getModifiers().contains(JavaModifier.STATIC);
                if (component && field.getRawType().isArray()) {
                    found.add(field.getFullName() + " is an array in a record");
                }
            }
        }
        assertThat(found).isEmpty();
    }

    private static void addBanned(JavaClass each, List<Bans.Ban> bans, Set<String> found) {
        for (JavaAccess<?> access : each.getAccessesFromSelf()) {
            String name = access.getTarget().getFullName();
            findBan(bans, name)
                    .ifPresent(ban -> found.add(access.getOrigin().getFullName() + " line " + access.getLineNumber()
                            + " uses " + name + ": " + ban.why()));
        }
    }

    private static Optional<Bans.Ban> findBan(List<Bans.Ban> bans, String name) {
        return bans.stream().filter(ban -> ban.covers(name)).findFirst();
    }

    private static List<JavaClass> targets(JavaClass each) {
        return each.getDirectDependenciesFromSelf().stream()
                .map(dependency -> dependency.getTargetClass().getBaseComponentType())
                .distinct()
                .toList();
    }

    private static boolean isOurs(JavaClass type) {
        return type.getName().startsWith("plumeline.");
    }

    private static boolean isOfTheLanguage(String name) {
        return name.startsWith("java.") || name.startsWith("org.jspecify.annotations.") || name.indexOf('.') < 0;
    }

    private static Set<String> homes(String name) {
        for (var home : HOMES.entrySet()) {
            if (name.startsWith(home.getKey())) {
                return new TreeSet<>(home.getValue());
            }
        }
        return Set.of();
    }

    private static String room(JavaClass type) {
        String[] parts = type.getPackageName().split("\\.");
        return parts.length > 1 && parts[0].equals("plumeline") ? parts[1] : "";
    }

    private static JavaClass outermost(JavaClass type) {
        JavaClass each = type;
        while (each.getEnclosingClass().isPresent()) {
            each = each.getEnclosingClass().get();
        }
        return each;
    }
}
