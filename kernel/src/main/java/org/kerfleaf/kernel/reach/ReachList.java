package org.kerfleaf.kernel.reach;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The list of what a cell may name without asking: the words, and what of the Java library only calculates. Whatever is
 * not on it counts as reaching for more, so what a later Java brings is off the list until somebody puts it on.
 *
 * <p>Class names are as in {@code java.util.List}, a nested class as in {@code java.util.Map$Entry}.
 */
public final class ReachList {
    /** How the names of the classes begin that are made from cells. */
    public static final String CELLS = "REPL.";

    private static final Set<String> LANG = words("""
            AssertionError AutoCloseable Boolean Byte CharSequence Character Cloneable Comparable Double Enum Float Integer
            Iterable Long MatchException Math Number Object Record Runnable Short StackTraceElement StrictMath String
            StringBuffer StringBuilder Throwable Void
            """);

    /** Of these only what is named here. */
    private static final Map<String, Set<String>> PARTLY = Map.of(
            "java.lang.System",
            words("out err lineSeparator arraycopy identityHashCode currentTimeMillis nanoTime"),
            "java.io.PrintStream",
            words("print println printf format append write flush checkError"),
            "java.lang.Runtime",
            words("getRuntime"),
            "java.lang.Class",
            words("desiredAssertionStatus"));

    /** What the compiler puts in for lambdas, joined texts, records and switches. */
    private static final Set<String> LINKING = words("""
            java.lang.invoke.LambdaMetafactory java.lang.invoke.StringConcatFactory java.lang.runtime.ObjectMethods
            java.lang.runtime.SwitchBootstraps java.lang.invoke.ConstantBootstraps java.lang.constant.ClassDesc
            java.lang.Enum$EnumDesc
            """);

    /** What the virtual machine looks up to link those, and no cell that is scanned can call. */
    private static final Set<String> LINKED = words("""
            java.lang.invoke.CallSite java.lang.invoke.MethodHandle java.lang.invoke.MethodHandles
            java.lang.invoke.MethodHandles$Lookup java.lang.invoke.MethodType java.lang.invoke.TypeDescriptor
            java.lang.invoke.VarHandle
            """);

    private static final Set<String> PACKAGES = words("""
            java.util java.util.function java.util.stream java.util.regex java.util.concurrent.atomic java.math java.text
            java.time java.time.chrono java.time.format java.time.temporal org.joda.money
            """);

    private static final Set<String> NOT_OF_THEM = words("""
            java.util.Formatter java.util.ListResourceBundle java.util.Properties java.util.PropertyResourceBundle
            java.util.ResourceBundle java.util.Scanner java.util.ServiceLoader java.util.SimpleTimeZone java.util.TimeZone
            java.util.Timer java.util.TimerTask java.util.concurrent.atomic.AtomicIntegerFieldUpdater
            java.util.concurrent.atomic.AtomicLongFieldUpdater java.util.concurrent.atomic.AtomicReferenceFieldUpdater
            """);

    private static final Set<String> SINGLE = words("""
            java.io.IOException java.io.Serializable java.io.StringReader java.io.StringWriter java.io.UncheckedIOException
            java.nio.charset.Charset java.nio.charset.StandardCharsets java.util.concurrent.ThreadLocalRandom
            java.util.concurrent.TimeUnit
            """);

    /** Methods of classes on the list that read or change what holds for the whole process. */
    private static final Set<String> SETTINGS = words("""
            java.lang.Boolean.getBoolean java.lang.Integer.getInteger java.lang.Long.getLong java.util.Locale.setDefault
            org.joda.money.CurrencyUnit.registerCurrency org.joda.money.CurrencyUnit.registerCurrencies
            """);

    /** What a class off the list is reached for, by how its name begins; the first that fits. */
    private static final Map<String, Reach> GROUPS = groups();

    private ReachList() {}

    private static Set<String> words(String text) {
        return Set.of(text.strip().split("\\s+"));
    }

    private static Map<String, Reach> groups() {
        Map<String, Reach> groups = new LinkedHashMap<>();
        put(groups, Reach.PROCESSES, "java.lang.Process");
        put(groups, Reach.THREADS, "java.lang.Thread", "java.lang.InheritableThread", "java.util.concurrent.");
        put(groups, Reach.THREADS, "java.util.Timer");
        put(groups, Reach.NATIVE, "java.lang.foreign.", "sun.", "jdk.internal.", "com.sun.jna.");
        put(groups, Reach.REFLECTION, "java.lang.reflect.", "java.lang.invoke.", "java.lang.Class", "java.lang.Module");
        put(
                groups,
                Reach.REFLECTION,
                "java.lang.Package",
                "java.lang.StackWalker",
                "java.util.ServiceLoader",
                "java.beans.");
        put(
                groups,
                Reach.REFLECTION,
                "java.lang.instrument.",
                "java.lang.constant.",
                "javax.script.",
                "javax.tools.",
                "jdk.");
        put(
                groups,
                Reach.NETWORK,
                "java.net.",
                "javax.net.",
                "java.rmi.",
                "javax.naming.",
                "java.sql.",
                "com.sun.net.");
        put(
                groups,
                Reach.NETWORK,
                "java.nio.channels.Socket",
                "java.nio.channels.ServerSocket",
                "java.nio.channels.Datagram");
        put(groups, Reach.FILES, "java.io.", "java.nio.", "java.util.zip.", "java.util.jar.", "java.util.logging.");
        put(groups, Reach.FILES, "java.util.Scanner", "java.util.Formatter", "java.util.Properties", "javax.imageio.");
        put(groups, Reach.FILES, "java.util.ResourceBundle", "java.util.PropertyResource", "java.util.ListResource");
        put(
                groups,
                Reach.ENVIRONMENT,
                "java.util.prefs.",
                "java.util.TimeZone",
                "java.util.SimpleTimeZone",
                "java.lang.System");
        put(
                groups,
                Reach.ENVIRONMENT,
                "java.lang.Runtime",
                "java.lang.management.",
                "javax.management.",
                "java.security.");
        return groups;
    }

    private static void put(Map<String, Reach> groups, Reach reach, String... beginnings) {
        for (String beginning : beginnings) {
            groups.put(beginning, reach);
        }
    }

    /** What naming a class reaches for, be it to make one, to extend it, or as its type; empty if nothing. */
    public static Optional<Reach> type(String className) {
        return isOnList(className) ? Optional.empty() : Optional.of(group(className));
    }

    /** What extending a class reaches for. Whoever extends one of which only a part is on the list has all of it. */
    public static Optional<Reach> parent(String className) {
        return PARTLY.containsKey(className) ? Optional.of(group(className)) : type(className);
    }

    /**
     * What a method or field reaches for; empty if nothing.
     *
     * @param owner the class it is called on, which may be one that inherits it
     * @param name its name, {@code <init>} for a constructor
     * @param gives the name of its type, or of what it returns
     */
    public static Optional<Reach> member(String owner, String name, String gives) {
        if (PARTLY.containsKey(owner)) {
            return PARTLY.get(owner).contains(name) ? Optional.empty() : Optional.of(part(owner, name));
        }
        if (name.equals("getClass") && gives.equals("java.lang.Class")) {
            return Optional.of(Reach.REFLECTION);
        }
        if (name.startsWith("parallel") && (owner.startsWith("java.util.") || gives.startsWith("java.util.stream."))) {
            return Optional.of(Reach.THREADS);
        }
        return SETTINGS.contains(owner + "." + name) ? Optional.of(Reach.ENVIRONMENT) : type(owner);
    }

    /** Whether a method that the compiler links to is one of its own. */
    public static boolean isLinking(String owner) {
        return LINKING.contains(owner);
    }

    /** Whether the loader of cells that may use the words only gives them a class. */
    public static boolean mayLoad(String className) {
        return isOnList(className) || LINKING.contains(className) || LINKED.contains(className);
    }

    private static boolean isOnList(String name) {
        if (name.startsWith(CELLS) || PARTLY.containsKey(name) || SINGLE.contains(name)) {
            return true;
        }
        if (name.startsWith("org.kerfleaf.")) {
            return !name.startsWith("org.kerfleaf.kernel.") && !name.startsWith("org.kerfleaf.export.");
        }
        String outer = name.replaceFirst("\\$.*", "");
        String inside = outer.substring(0, Math.max(0, outer.lastIndexOf('.')));
        if (inside.equals("java.lang")) {
            String simple = outer.substring("java.lang.".length());
            return LANG.contains(simple) || simple.matches("\\w+(Exception|Error)");
        }
        return PACKAGES.contains(inside) && !NOT_OF_THEM.contains(outer);
    }

    private static Reach group(String className) {
        return GROUPS.entrySet().stream()
                .filter(group -> className.startsWith(group.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse(Reach.OTHER);
    }

    private static Reach part(String owner, String name) {
        return switch (name) {
            case "exit", "halt", "addShutdownHook", "removeShutdownHook", "runFinalizersOnExit" -> Reach.EXIT;
            case "load", "loadLibrary", "mapLibraryName" -> Reach.NATIVE;
            case "exec" -> Reach.PROCESSES;
            case "inheritedChannel" -> Reach.NETWORK;
            default -> group(owner);
        };
    }
}
