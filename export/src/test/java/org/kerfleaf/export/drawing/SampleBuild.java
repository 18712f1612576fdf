package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.joint.GuideLine;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.shape.Axis;
import org.kerfleaf.shape.CabinetSolids;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;

/** The seed-swap cabinet on its post, as drawings show it. */
final class SampleBuild {
    private static final Map<String, String> LETTERS = letters();

    static final Lettering WORDS = new Lettering(List.of(), MeasureStyle.INCHES);

    private SampleBuild() {}

    private static Map<String, String> letters() {
        Map<String, String> letters = new LinkedHashMap<>();
        String names = "Floor Side Back Front Shelf Roof Rake_trim Eave_trim Door Pane Post Arm Seat";
        String alphabet = "ABCDEFGHJKLMN";
        int i = 0;
        for (String name : names.split(" ")) {
            letters.put(name.replace('_', ' '), alphabet.substring(i, ++i));
        }
        return letters;
    }

    /** Overall, and what a maker measures: walls, doorway, door, trims. */
    static List<Measure> sizes() {
        List<Measure> sizes = new ArrayList<>(Measure.overall(cabinet()));
        double t = 23 / 32.0;
        sizes.add(measure(Axis.X, -t, 22 + t));
        sizes.add(measure(Axis.X, 2, 20));
        sizes.add(measure(Axis.X, -t, 0));
        sizes.add(measure(Axis.X, 22, 22 + t));
        sizes.add(measure(Axis.X, 0, 22));
        sizes.add(measure(Axis.Z, 2, 22));
        sizes.add(measure(Axis.Z, 0, 24));
        sizes.add(measure(Axis.Z, -1.5, 0));
        sizes.add(measure(Axis.Z, -73.5, -1.5));
        sizes.add(measure(Axis.Z, 0, 2));
        sizes.add(measure(Axis.Y, 0, 11));
        sizes.add(measure(Axis.Y, -t, 0));
        sizes.add(measure(Axis.Y, 11, 11 + t));
        sizes.add(measure(Axis.Y, 3, 11));
        return sizes;
    }

    private static Measure measure(Axis axis, double fromInches, double toInches) {
        return new Measure(axis, Length.ofInches(fromInches), Length.ofInches(toInches));
    }

    /** The back with where floor and shelves meet it, and their screws. */
    static Marking backMarking() {
        double t = 23 / 32.0;
        List<GuideLine> guides = new ArrayList<>();
        List<Vector> pilots = new ArrayList<>();
        Map<String, Double> levels = new LinkedHashMap<>();
        levels.put("middle of Floor", t / 2);
        levels.put("middle of lower Shelf", 8 + t * 1.5);
        levels.put("middle of upper Shelf", 15 + t * 1.5);
        levels.forEach((words, v) -> {
            guides.add(new GuideLine(at(t, v), at(22 + t, v), words));
            for (double u : new double[] {2, 11 + t, 22 + 2 * t - 2}) {
                pilots.add(at(u, v));
            }
        });
        return new Marking(
                "Back",
                "C Back",
                solid("Back"),
                SheetSide.INSIDE,
                guides,
                pilots,
                "INSIDE up.",
                "One piece; left and right are the same.",
                "");
    }

    static Marking marking(String part) {
        return new Marking(
                part,
                letter(part) + " " + part,
                solid(part),
                SheetSide.INSIDE,
                List.of(),
                List.of(),
                "INSIDE up.",
                "A pair: the second is its mirror image.",
                "");
    }

    private static Solid solid(String part) {
        return CabinetSolids.all().stream()
                .filter(s -> s.part().equals(part))
                .findFirst()
                .orElseThrow()
                .solid();
    }

    private static Vector at(double uInches, double vInches) {
        return new Vector(uInches * 25.4, vInches * 25.4, 0);
    }

    static String letter(String part) {
        return LETTERS.get(part);
    }

    static List<Shown> cabinet() {
        return CabinetSolids.all().stream().map(SampleBuild::plain).toList();
    }

    static List<Body> bodies() {
        return cabinet().stream().map(Body::of).toList();
    }

    /** The roof goes on; door, pane and trims come later. */
    static List<Shown> roofStep() {
        List<Shown> step = new ArrayList<>();
        for (PlacedSolid solid : CabinetSolids.all()) {
            switch (solid.part()) {
                case "Roof" ->
                    step.add(Shown.of(solid, letter("Roof"), Shown.State.NEW).pulled(new Vector(0, 0, 120)));
                case "Door", "Pane", "Rake trim", "Eave trim" -> {
                    // Comes later.
                }
                default -> step.add(Shown.of(solid, "", Shown.State.EARLIER));
            }
        }
        return step;
    }

    static List<Shown> apart() {
        return CabinetSolids.all().stream()
                .filter(s -> !s.part().equals("Post")
                        && !s.part().equals("Arm")
                        && !s.part().equals("Seat"))
                .map(s -> plain(s).pulled(away(s)))
                .toList();
    }

    private static Vector away(PlacedSolid solid) {
        boolean right = solid.bounds().middle().x() > 11 * 25.4;
        int side = right ? 1 : -1;
        return switch (solid.part()) {
            case "Side" -> new Vector(side * 400, 0, 0);
            case "Roof" -> new Vector(side * 150, 0, 450);
            case "Rake trim" -> new Vector(side * 150, solid.bounds().middle().y() < 100 ? -500 : 700, 450);
            case "Eave trim" -> new Vector(side * 600, 0, 300);
            case "Back" -> new Vector(0, 900, 0);
            case "Front" -> new Vector(0, -900, 0);
            case "Door" -> new Vector(0, -1500, 0);
            case "Pane" -> new Vector(0, -1250, 0);
            default -> Vector.ZERO;
        };
    }

    private static Shown plain(PlacedSolid solid) {
        Shown shown = Shown.plain(solid, letter(solid.part()));
        return solid.part().equals("Pane") ? shown.asGlass() : shown;
    }
}
