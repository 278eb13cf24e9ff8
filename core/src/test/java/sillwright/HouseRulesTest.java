package sillwright;

import module java.base;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/// Reads the compiled classes and holds the core to its rules; then shows on classes that break them that it would notice.
@DisplayNameGeneration(ReplaceUnderscores.class)
class HouseRulesTest {
    private static final List<String> STAGES = List.of("measure", "walk", "water", "wood", "work", "watch");
    private static final JavaClasses CORE = new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests()).importPackages("sillwright");

    /// No stage looks at one that comes after it, nor at the root, which knows them all.
    private static List<ArchRule> order(String root) {
        List<ArchRule> rules = new ArrayList<>();
        for (int i = 0; i < STAGES.size(); i++) {
            List<String> after = new ArrayList<>(List.of(root));
            for (String later : STAGES.subList(i + 1, STAGES.size())) after.add(root + "." + later + "..");
            rules.add(noClasses().that().resideInAPackage(root + "." + STAGES.get(i) + "..").should().dependOnClassesThat()
                    .resideInAnyPackage(after.toArray(String[]::new)).allowEmptyShould(true));
        }
        return rules;
    }

    private static ArchRule noKnot(String root) { return slices().matching(root + ".(*)..").should().beFreeOfCycles().allowEmptyShould(true); }

    /// Plain computation: these packages and no others, and from them nothing that reaches the machine.
    private static final ArchRule PLAIN = classes().should().onlyDependOnClassesThat().resideInAnyPackage("sillwright..", "java.lang", "java.lang.annotation", "java.lang.invoke",
            "java.lang.runtime", "java.math", "java.time", "java.time.chrono", "java.time.format", "java.time.temporal", "java.util", "java.util.function", "java.util.random", "java.util.stream");

    private static final Set<String> NOT_TOUCHED = Set.of("java.lang.Thread", "java.lang.ThreadLocal", "java.lang.Process", "java.lang.ProcessBuilder", "java.lang.Runtime",
            "java.lang.ClassLoader", "java.time.Clock", "java.util.Scanner", "java.util.Timer", "java.util.Random", "java.util.SplittableRandom", "java.util.Formatter", "java.util.ServiceLoader", "java.util.ResourceBundle");

    /// What a call of a class that may be used must still not do.
    private static final DescribedPredicate<JavaAccess<?>> REACHES_OUT = DescribedPredicate.describe("reaches the clock, the locale, chance or the machine", access -> {
        String owner = access.getTargetOwner().getName(), name = access.getName();
        List<String> types = access.getTarget() instanceof com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget call
                ? call.getRawParameterTypes().stream().map(JavaClass::getName).toList() : List.of();
        boolean locale = types.contains("java.util.Locale"), clock = types.contains("java.time.Clock");
        if (NOT_TOUCHED.contains(owner)) return true;
        return switch (owner) {
            case "java.lang.System" -> !Set.of("arraycopy", "identityHashCode").contains(name);
            case "java.lang.Math", "java.lang.StrictMath" -> name.equals("random");
            case "java.lang.Class" -> name.startsWith("forName") || name.startsWith("getDeclared") || name.startsWith("getMethod") || name.startsWith("getField")
                    || name.startsWith("getConstructor") || name.startsWith("getResource") || name.equals("newInstance");
            case "java.lang.String" -> name.equals("format") && !locale || name.equals("formatted") || (name.equals("toLowerCase") || name.equals("toUpperCase")) && !locale;
            case "java.util.Locale" -> name.equals("getDefault") || name.equals("setDefault");
            case "java.util.UUID" -> name.equals("randomUUID");
            case "java.util.Collections" -> name.equals("shuffle") && types.size() < 2;
            case "java.util.random.RandomGenerator" -> name.equals("getDefault");
            case "java.util.Collection", "java.util.List", "java.util.Set" -> name.equals("parallelStream");
            default -> name.equals("parallel") && owner.startsWith("java.util.stream.")
                    || owner.startsWith("java.time.") && (name.equals("now") && !clock || name.equals("systemDefault") || name.equals("ofPattern") && !locale);
        };
    });

    private static final ArchRule PURE = noClasses().should().accessTargetWhere(REACHES_OUT);

    private static void holds(ArchRule rule, JavaClasses classes) {
        EvaluationResult result = rule.evaluate(classes);
        assertFalse(result.hasViolation(), () -> String.join("\n", result.getFailureReport().getDetails()));
    }

    @Test
    void the_classes_of_every_stage_that_has_any_are_read() {
        for (String stage : STAGES) assertTrue(CORE.stream().anyMatch(c -> c.getPackageName().equals("sillwright." + stage)) , stage);
        assertTrue(CORE.size() > 60);
    }

    @Test
    void no_stage_looks_ahead() { for (ArchRule rule : order("sillwright")) holds(rule, CORE); }

    @Test
    void no_two_packages_know_each_other() { holds(noKnot("sillwright"), CORE); }

    @Test
    void the_core_is_plain_java_without_files_network_threads_or_reflection() { holds(PLAIN, CORE); }

    @Test
    void the_core_asks_no_clock_no_locale_and_no_chance() { holds(PURE, CORE); }

    @Test
    void a_look_ahead_would_be_noticed() {
        JavaClasses broken = new ClassFileImporter().importPackages("looksahead");
        assertEquals(List.of("measure"), STAGES.stream().filter(stage -> order("looksahead").get(STAGES.indexOf(stage)).evaluate(broken).hasViolation()).toList());
        assertTrue(noKnot("looksahead").evaluate(broken).hasViolation());
    }

    /// Each nested class breaks one rule.
    static final class Breaks {
        static class TheClock { Object now() { return java.time.LocalDate.now(); } }
        static class TheNanos { long now() { return System.nanoTime(); } }
        static class TheMillis { long now() { return System.currentTimeMillis(); } }
        static class TheLocale { String low(String s) { return s.toLowerCase(); } }
        static class TheDefault { Object locale() { return Locale.getDefault(); } }
        static class TheFormat { String number(double x) { return String.format("%f", x); } }
        static class Chance { double draw() { return Math.random(); } }
        static class NewChance { double draw() { return new Random().nextDouble(); } }
        static class AThread { void go() { new Thread(() -> {}).start(); } }
        static class AFile { boolean there() { return new java.io.File("x").exists(); } }
        static class APath { Object there() { return java.nio.file.Path.of("x"); } }
        static class ThePrinter { void say() { System.out.println("x"); } }
        static class Concurrency { Object map() { return new java.util.concurrent.ConcurrentHashMap<String, String>(); } }
        static class Reflection { Object mirror() throws ClassNotFoundException { return Class.forName("x"); } }
        static class ADependency { Object other() { return new org.junit.jupiter.api.DisplayNameGenerator.Simple(); } }
        static class Parallel { Object many() { return List.of(1).parallelStream(); } }
        static class NothingAtAll { double plain(double x) { return Math.sqrt(x) + LocalDate.of(2026, 1, 1).getYear() + "A".toLowerCase(Locale.ROOT).length(); } }
    }

    @ParameterizedTest
    @ValueSource(classes = {Breaks.TheClock.class, Breaks.TheNanos.class, Breaks.TheMillis.class, Breaks.TheLocale.class, Breaks.TheDefault.class, Breaks.TheFormat.class,
            Breaks.Chance.class, Breaks.NewChance.class, Breaks.AThread.class, Breaks.AFile.class, Breaks.APath.class, Breaks.ThePrinter.class, Breaks.Concurrency.class,
            Breaks.Reflection.class, Breaks.ADependency.class, Breaks.Parallel.class})
    void a_class_that_breaks_a_rule_would_be_noticed(Class<?> broken) {
        JavaClasses one = new ClassFileImporter().importClasses(broken);
        assertTrue(PLAIN.evaluate(one).hasViolation() || PURE.evaluate(one).hasViolation(), broken.getSimpleName());
    }

    @Test
    void a_class_that_breaks_none_would_pass() {
        JavaClasses one = new ClassFileImporter().importClasses(Breaks.NothingAtAll.class);
        holds(PLAIN, one);
        holds(PURE, one);
    }
}
