package org.kerfleaf.kernel.compile;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/** Says in a maker's words of what type something is: {@code a length}, {@code a text in quotes}. */
public final class TypeWords {
    private static final List<String> SAID_IN_LOWER_CASE = List.of(
            "Length",
            "Angle",
            "Sheet",
            "Part",
            "Screw",
            "Nail",
            "Bolt",
            "Glue",
            "Caulk",
            "Paint",
            "Saw",
            "Jigsaw",
            "Router",
            "Drawer",
            "Joint",
            "Seal",
            "Coat",
            "Fitting",
            "Glazing",
            "Hole",
            "Fastener",
            "Item",
            "Mount",
            "Ratio",
            "Area",
            "Size",
            "Vehicle");

    private TypeWords() {}

    /** A type with its article. */
    public static String of(String name) {
        return wanted(name).replaceFirst(", like .*", "");
    }

    /** A type with its article, and how one is said where that is not plain. */
    public static String wanted(String name) {
        String bare = shortName(name.strip());
        if (bare.endsWith("...")) {
            return "any number, each " + wanted(bare.substring(0, bare.length() - 3));
        }
        if (bare.endsWith("[]")) {
            return "an array";
        }
        return switch (bare.replaceFirst("(?<=\\w)<.*", "").replaceFirst("^(?:Trait|Seal|Coat)\\.", "")) {
            case "String", "CharSequence" -> "a text in quotes";
            case "char", "Character" -> "a letter in single quotes";
            case "int", "long", "short", "byte", "Integer", "Long" -> "a whole number";
            case "double", "float", "Double", "Float" -> "a number with a point";
            case "boolean", "Boolean" -> "true or false";
            case "void" -> "nothing";
            case "<null>", "<nulltype>" -> "nothing (null)";
            case "IntFunction" -> "what to make each time, like i -> panel(...)";
            case "List", "Collection", "ArrayList", "Set" -> "a list";
            case "Object" -> "anything";
            case "Lumber" -> "a board to cut from, like lumber(\"2x4\")";
            case "Side" -> "a side, like LEFT or OUTSIDE";
            case "Way" -> "a way, like LEFT_TO_RIGHT";
            case "LengthUnit" -> "a unit, like INCHES";
            case "Wide" -> "a width, like wide(\"1/2 in\")";
            case "Deep" -> "a depth, like deep(\"3/16 in\")";
            case "Thick" -> "a thickness, like thick(\"3/16 in\")";
            case "Across" -> "a diameter, like across(\"10 in\")";
            case "Spacing" -> "a spacing, like every(\"5 in\")";
            case "Bead" -> "a bead, like bead(\"1/4 in\")";
            case "Coats" -> "how many coats, like times(2)";
            case "Seams" -> "seams, like insideSeams()";
            case "Faces" -> "faces, like insideFaces()";
            case "Volume" -> "a volume, like perGallon()";
            case "Soil" -> "a soil, like SAND";
            case "Exposure" -> "how open the ground is, like OPEN_GROUND";
            case "Reach" -> "who reaches for it, like ADULT";
            case "SagLimit" -> "a limit for sag, like VISIBLE";
            case "Share" -> "a share of a load, like halfOf(onTop)";
            case "Bag" -> "a bag of concrete, like bag(\"60 lb\")";
            case "Placing" -> "a part in its place, like place(floor)";
            case "OpeningOf" -> "a part's opening, like front.opening(\"doorway\")";
            case "EdgeOf" -> "a part's edge, like roof.eave()";
            case "Shape" -> "a shape, like round(\"1 in\")";
            case "Asked" -> "a value known only when planned";
            case "From" -> "a distance from an edge, like from(BOTTOM, \"8 in\")";
            case "At" -> "a corner, like at(\"8 in\", \"0 in\")";
            case "JointLoad" -> "what hangs on a joint";
            case "Carries" -> "a load, like carries(top, \"40 lb/sq ft\")";
            case "Contents" -> "things that go in, like contents(\"Seed box\")";
            case "Fill" -> "what fills a build, like fill(sidesIn, \"soil\")";
            case "Kits" -> "a number of kits, like kits(25)";
            case "Session" -> "a session of a group, like session(\"90 min\")";
            case "Lag" -> "a lag screw";
            case "MitreSaw" -> "a mitre saw";
            case "Meets" -> "what an end meets, like corner(\"110 deg\")";
            case "Held" -> "a held size";
            case "Units" -> "the workbook's unit";
            case "Prices" -> "the workbook's currency";
            case "SiteSaid" -> "the place it stands in";
            case "CutAll", "WorkTime", "People", "Ahead" -> "a thing said of the work";
            case "BoughtKit" -> "a bought kit";
            case "Tool" -> "a tool to be paid for";
            default -> withArticle(bare);
        };
    }

    /** What stands in brackets. */
    static String list(String types) {
        return list(types, TypeWords::of);
    }

    /** What is wanted in brackets. */
    static String wantedList(String types) {
        return list(types, TypeWords::wanted);
    }

    private static String list(String types, UnaryOperator<String> each) {
        String inside = types.strip();
        if (inside.isEmpty() || inside.startsWith("no arg") || inside.startsWith("compiler.misc.no.args")) {
            return "nothing";
        }
        return Arrays.stream(inside.split(",(?![^<]*>)")).map(each).collect(Collectors.joining(", then "));
    }

    private static String withArticle(String name) {
        boolean vowel = !name.isEmpty() && "aeiou".indexOf(Character.toLowerCase(name.charAt(0))) >= 0;
        String word = SAID_IN_LOWER_CASE.contains(name) ? name.toLowerCase(Locale.ROOT) : "“" + name + "”";
        return (vowel ? "an " : "a ") + word;
    }

    /** Names without their packages. */
    public static String shortName(String name) {
        return name.replaceAll("(?<![\\w$])(?:[a-z][\\w$]*\\.)+(?=\\w)", "");
    }
}
