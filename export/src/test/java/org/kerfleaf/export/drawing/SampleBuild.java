package org.kerfleaf.export.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.shape.CabinetSolids;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

/** The seed-swap cabinet on its post, as drawings show it. */
final class SampleBuild {
    private static final Map<String, String> LETTERS = letters();

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
