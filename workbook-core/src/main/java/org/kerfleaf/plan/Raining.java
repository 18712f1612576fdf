package org.kerfleaf.plan;

import static org.kerfleaf.reason.Given.given;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rain.RainWalk;
import org.kerfleaf.rain.Wet;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.reason.Reason;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;
import org.kerfleaf.sketch.Bond;
import org.kerfleaf.sketch.Coat;
import org.kerfleaf.sketch.EdgeOf;
import org.kerfleaf.sketch.Glazing;
import org.kerfleaf.sketch.Glue;
import org.kerfleaf.sketch.Hole;
import org.kerfleaf.sketch.OfSite;
import org.kerfleaf.sketch.PartKind;
import org.kerfleaf.sketch.Seal;
import org.kerfleaf.sketch.Sheet;
import org.kerfleaf.sketch.Sketch;
import org.kerfleaf.sketch.Trait;

/**
 * Lets it rain on the finished build, and says in the trade's words what the water finds.
 *
 * <p>{@link RainWalk} knows faces; here it is known which of them is the edge of a sheet or end grain, which seam is caulked or glued and
 * which pieces are one.
 */
final class Raining {
    /** A face flatter than this keeps water. {@code Common practice, no source}. */
    private static final double SLOPED = StrictMath.cos(StrictMath.toRadians(5));

    /** A face whose normal is at least this square to the sheet's is an edge of it; as much along a board is its end. */
    private static final double EDGE = 0.7;

    /** Rain that falls on less than this is not worth a word, in square millimetres seen from above. */
    private static final double DROP = 100;

    private final Sketch sketch;
    private final Sizing sizing;
    private final Assembly assembly;
    private final MeasureStyle style;
    private final List<PlannedJoint> joints;
    private final Map<PlacedSolid, Piece> pieces = new HashMap<>();
    private final Map<PlacedSolid, Glazing> panes = new HashMap<>();
    private final Optional<RainWalk> walk;

    Raining(
            Sketch sketch,
            Sizing sizing,
            Assembly assembly,
            Bodies bodies,
            List<PlannedJoint> joints,
            MeasureStyle style) {
        this.sketch = sketch;
        this.sizing = sizing;
        this.assembly = assembly;
        this.joints = joints;
        this.style = style;
        bodies.all().forEach((piece, solid) -> pieces.put(solid, piece));
        bodies.panes().forEach((glazing, solid) -> panes.put(solid, glazing));
        List<PlacedSolid> solids = Stream.concat(bodies.all().values().stream(), bodies.panes().values().stream())
                .toList();
        walk = outdoors(sketch).orElse(false) && !solids.isEmpty()
                ? Optional.of(RainWalk.over(solids))
                : Optional.empty();
    }

    /** Whether rain falls on the build: said outright, or it stands in the ground or is of sheets bonded for the weather. */
    static Optional<Boolean> outdoors(Sketch sketch) {
        Optional<Boolean> said = Siting.said(sketch, OfSite.RainedOn.class).map(OfSite.RainedOn::falls);
        boolean shown = !sketch.all(Hole.class).isEmpty()
                || sketch.all(Sheet.class).stream()
                        .anyMatch(
                                sheet -> sheet.bond().filter(Bond::isForWeather).isPresent());
        return said.isPresent() ? said : shown ? Optional.of(true) : Optional.empty();
    }

    /** The seams that rain reaches and that nothing closes but caulk. */
    Figure<Length> wetSeams() {
        double sum = walk.stream()
                .flatMap(w -> w.wet().stream())
                .filter(w -> w instanceof Wet.Seam seam && closes(seam).equals(Closed.BY_CAULK))
                .mapToDouble(w -> ((Wet.Seam) w).length())
                .sum();
        return Figure.of(
                Length.ofMillimetres(sum),
                "lines between two pieces that rain reaches, where the joint leads level or down into the wood and is not glued",
                Reason.GEOMETRY);
    }

    /** Where the rain goes; empty if none falls. */
    Optional<Rain> rain() {
        return walk.map(walked -> {
            Map<String, RainFinding> groups = new LinkedHashMap<>();
            for (Wet wet : walked.wet()) {
                finding(wet).ifPresent(found -> groups.merge(found.key(), found, RainFinding::and));
            }
            List<RainFinding> sorted = groups.values().stream()
                    .sorted(Comparator.comparing((RainFinding f) -> f.advice().isEmpty())
                            .thenComparing(RainFinding::kind))
                    .toList();
            List<RainMark> marks = new ArrayList<>();
            sorted.forEach(found -> marks.add(found.mark(marks.size() + 1, style)));
            return new Rain(walked.ways(), marks);
        });
    }

    private Optional<RainFinding> finding(Wet wet) {
        if (wet instanceof Wet.Surface surface) {
            return surface(surface);
        }
        if (wet instanceof Wet.Seam seam) {
            return seam(seam);
        }
        if (wet instanceof Wet.Trap trap) {
            List<String> parts =
                    trap.solids().stream().map(PlacedSolid::part).distinct().toList();
            return Optional.of(new RainFinding(
                    RainMark.Kind.TRAP,
                    parts,
                    where(trap.face()),
                    "Water runs in and cannot leave",
                    "Give it a drain, a hole or a notch at its lowest place, or fill it with caulk.",
                    0,
                    List.of(trap.at())));
        }
        Wet.Creep creep = (Wet.Creep) wet;
        return Optional.of(new RainFinding(
                RainMark.Kind.DRIP,
                List.of(creep.solid().part(), creep.wall().part()),
                "",
                "Under its edge water creeps to " + creep.wall().part(),
                "Cut a drip groove 1/8 in (3 mm) wide and deep, 1/2 in (12 mm) back from the edge.",
                creep.length(),
                List.of(creep.at())));
    }

    // ---- surfaces ------------------------------------------------------------------------------------------------

    private Optional<RainFinding> surface(Wet.Surface surface) {
        double up = surface.face().normal().z();
        String part = surface.solid().part();
        if (surface.squareMillimetres() * up < DROP || surface.stands() == Wet.Stands.IN_A_BASIN) {
            return Optional.empty();
        }
        boolean edge = pieces.containsKey(surface.solid()) && isEdge(surface.solid(), surface.face());
        if (!edge && up <= SLOPED) {
            return Optional.empty();
        }
        boolean sealed = edge && up <= SLOPED && isEndGrainCoated(part);
        String advice = sealed
                ? ""
                : edge
                        ? up > SLOPED ? "Cap it, or bevel it by 5° or more and seal it." : "Seal it well, or cap it."
                        : "Slope it by 5° or more, or cover it.";
        String words = edge
                ? "%s, %s, faces up and gets wet%s".formatted(grain(part), slope(up), sealed ? "; it is sealed" : "")
                : "It is %s, and water stays on it".formatted(slope(up));
        return Optional.of(new RainFinding(
                edge ? RainMark.Kind.EDGE : RainMark.Kind.LEDGE,
                List.of(part),
                where(surface.face()),
                words,
                advice,
                surface.longest(),
                List.of(surface.at())));
    }

    private String grain(String part) {
        return isPanel(part) ? "An edge of the sheet" : "End grain";
    }

    private boolean isPanel(String part) {
        return sizing.of(part).filter(p -> p.said().kind() == PartKind.PANEL).isPresent();
    }

    /** An edge of a sheet, or end grain of a board: both drink. A metal moulding has neither. */
    private boolean isEdge(PlacedSolid solid, Face face) {
        if (isPanel(solid.part())) {
            return Math.abs(face.normal().dot(solid.pose().w())) < EDGE;
        }
        boolean wood = sizing.of(solid.part())
                .flatMap(p -> sketch.lumber(p.said().stock()))
                .filter(l -> !l.moulding() || l.species().isPresent())
                .isPresent();
        return wood && Math.abs(face.normal().dot(along(solid))) > EDGE;
    }

    /** Along the grain of a board: its longer way. */
    private static Vector along(PlacedSolid solid) {
        Vector u = solid.pose().u();
        Vector v = solid.pose().v();
        return extent(solid, u) >= extent(solid, v) ? u : v;
    }

    private static double extent(PlacedSolid solid, Vector along) {
        PlacedSolid.Reach reach = solid.project(along);
        return reach.most() - reach.least();
    }

    private boolean isEndGrainCoated(String part) {
        return sketch.all(Coat.class).stream()
                .flatMap(c -> c.faces().stream())
                .anyMatch(f ->
                        f.which().holdsEnds() && f.part().filter(part::equals).isPresent());
    }

    // ---- seams ---------------------------------------------------------------------------------------------------

    /** What may close a seam. */
    private enum Closed {
        /** It is one piece of metal bent over the ridge, or a pane that lies in its bedding. */
        ALREADY,
        /** Glue whose name says that it stands water. */
        BY_GLUE,
        BY_CAULK,
        /** Bedding: a pane must be free to move. */
        BY_BEDDING,
        /** Nothing: it opens, or one build only stands on the other. */
        BY_COVER
    }

    private Closed closes(Wet.Seam seam) {
        boolean bent = seam.a().part().equals(seam.b().part())
                && sizing.of(seam.a().part())
                        .flatMap(p -> p.said().trait(Trait.Along.class))
                        .filter(a -> a.edge().edge() == EdgeOf.Edge.RIDGE)
                        .isPresent();
        boolean bedded = Stream.of(seam.a(), seam.b())
                .flatMap(s -> Optional.ofNullable(panes.get(s)).stream())
                .anyMatch(glazing -> glazing.bedding().isPresent());
        if (bent || bedded) {
            return Closed.ALREADY;
        }
        if (glue(seam).filter(Glue::standsWater).isPresent()) {
            return Closed.BY_GLUE;
        }
        if (panes.containsKey(seam.a()) || panes.containsKey(seam.b())) {
            return Closed.BY_BEDDING;
        }
        Piece a = pieces.get(seam.a());
        Piece b = pieces.get(seam.b());
        boolean oneBuild = assembly.number(a.placing()) == assembly.number(b.placing());
        return oneBuild ? Closed.BY_CAULK : Closed.BY_COVER;
    }

    private Optional<Glue> glue(Wet.Seam seam) {
        return joints.stream()
                .filter(joint -> joint.touches().stream()
                        .anyMatch(t ->
                                t.place().a().equals(seam.a()) && t.place().b().equals(seam.b())
                                        || t.place().a().equals(seam.b())
                                                && t.place().b().equals(seam.a())))
                .flatMap(joint -> joint.said().glue().stream())
                .findFirst();
    }

    private Optional<RainFinding> seam(Wet.Seam seam) {
        List<String> parts =
                Stream.of(seam.a().part(), seam.b().part()).sorted().toList();
        boolean caulked =
                sketch.all(Seal.class).stream().anyMatch(s -> s.seams().which() == Seal.Which.WET);
        String words = "";
        String advice = "";
        switch (closes(seam)) {
            case ALREADY -> {
                return Optional.empty();
            }
            case BY_GLUE ->
                words = "Rain reaches this seam; " + glue(seam).orElseThrow().name() + " glue closes it";
            case BY_CAULK -> {
                words = caulked
                        ? "Rain reaches this seam; caulk closes it"
                        : "Rain reaches this seam, and it is neither covered nor caulked";
                advice = caulked ? "" : "Caulk it, say seal(wetSeams()), or cover it.";
            }
            case BY_BEDDING -> {
                words = "Rain reaches the rim of the pane, and it lies in no bedding";
                advice = "Bed the pane: glaze(pane).bedded(glazingTape(…)).";
            }
            case BY_COVER -> {
                words = "Rain reaches this seam, and it is not covered";
                advice = "What lies on top of another build should reach past it, or a strip cover the seam.";
            }
        }
        return Optional.of(
                new RainFinding(RainMark.Kind.SEAM, parts, "", words, advice, seam.length(), List.of(seam.at())));
    }

    // ---- in words ------------------------------------------------------------------------------------------------

    /** The face as a reader would call it: which way it looks, or what it was cut for. */
    private static String where(Face face) {
        Vector n = face.normal();
        if (face.name().contains(" ")) {
            return face.name().replaceAll(" (FLOOR|TOP|BOTTOM|LEFT|RIGHT|ROUND|[A-Z]+_[A-Z]+)$", "");
        }
        if (n.z() > EDGE) {
            return "upper face";
        }
        if (Math.abs(n.x()) > Math.abs(n.y())) {
            return n.x() > 0 ? "right side" : "left side";
        }
        return n.y() > 0 ? "back" : "front";
    }

    private static String slope(double up) {
        double degrees = StrictMath.toDegrees(StrictMath.acos(Math.min(1, up)));
        return degrees < 0.5 ? "level" : "sloping by " + Math.round(degrees) + "°";
    }

    /** Places of one kind on equal parts; how much of each is a length, in millimetres, or 0. */
    private record RainFinding(
            RainMark.Kind kind,
            List<String> parts,
            String where,
            String words,
            String advice,
            double length,
            List<Vector> at) {
        String key() {
            return kind + " " + parts + " " + where + " " + words;
        }

        RainFinding and(RainFinding more) {
            List<Vector> all = new ArrayList<>(at);
            all.addAll(more.at);
            return new RainFinding(kind, parts, where, words, advice, length + more.length, all);
        }

        RainMark mark(int number, MeasureStyle style) {
            Optional<Figure<Length>> much = length > 0
                    ? Optional.of(Figure.of(
                            Length.ofMillimetres(length),
                            "the longer sides of all places that water reaches",
                            Reason.GEOMETRY,
                            given("places", at.size())))
                    : Optional.empty();
            String places = at.size() > 1 ? " in %d places".formatted(at.size()) : "";
            String size =
                    much.map(l -> ": " + l.value().in(style) + places).orElse(places.isEmpty() ? "" : "," + places);
            return new RainMark(number, kind, parts, where, much, words + size + ".", advice, at);
        }
    }
}
