package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.shape.ClearLine;
import org.kerfleaf.shape.Face;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;

/** What is marked on the parts: on the face from which fasteners are driven, and where holes, openings and rabbets come. */
final class Markings {
    /** A normal this much along the part's w belongs to a wide face or to what is cut into one. */
    private static final double WIDE = 0.9;

    private final Bodies bodies;
    private final List<PlannedPart> parts;
    private final PieceNames names;
    private final FastenerSettings settings;
    private final MarkingWords words;
    private final Map<Piece, Map<String, MarkedFace>> faces = new LinkedHashMap<>();

    Markings(Bodies bodies, List<PlannedPart> parts, PieceNames names, FastenerSettings settings, MeasureStyle style) {
        this.bodies = bodies;
        this.parts = parts;
        this.names = names;
        this.settings = settings;
        this.words = new MarkingWords(names, style);
    }

    /** One drawing for each different piece and face, in the order of the parts' letters. */
    List<Marking> of(List<DrivenContact> driven, List<HingeMarks.Mark> hinges) {
        driven.forEach(contact -> mark(contact, driven));
        hinges.forEach(mark ->
                wide(mark.piece(), bodies.of(mark.piece()), mark.up()).guide(mark.from(), mark.to(), mark.words()));
        bodies.all().forEach(this::cutOut);
        List<Marking> markings = new ArrayList<>();
        for (PlannedPart part : parts) {
            List<MarkedFace> all = names.equals(part.name()).stream()
                    .flatMap(piece -> faces.getOrDefault(piece, Map.of()).values().stream())
                    .toList();
            markings.addAll(drawings(part, all));
        }
        return markings;
    }

    // ---- what is marked ---------------------------------------------------------------------------------------------

    private void mark(DrivenContact contact, List<DrivenContact> all) {
        Piece piece = contact.driver().through();
        String drill = words.drill(contact, settings.of(contact));
        Map<Face, MarkedFace> marked = new LinkedHashMap<>();
        for (Driver.Driven one : contact.driven()) {
            MarkedFace face = marked.computeIfAbsent(one.from(), f -> face(piece, f));
            face.hole(one.fastener().head(), drill);
        }
        MarkedFace first = marked.values().iterator().next();
        for (FastenerRow row : contact.rows()) {
            guide(contact, row, first, all);
        }
    }

    private MarkedFace face(Piece piece, Face face) {
        PlacedSolid solid = bodies.of(piece);
        double along = face.normal().dot(solid.pose().w());
        if (Math.abs(along) > WIDE) {
            return wide(piece, solid, along > 0 ? SheetSide.INSIDE : SheetSide.OUTSIDE);
        }
        return faces.computeIfAbsent(piece, p -> new LinkedHashMap<>())
                .computeIfAbsent(face.name(), n -> MarkedFace.edge(piece, solid, face));
    }

    private MarkedFace wide(Piece piece, PlacedSolid solid, SheetSide up) {
        return faces.computeIfAbsent(piece, p -> new LinkedHashMap<>())
                .computeIfAbsent(up.name(), n -> MarkedFace.wide(piece, solid, up));
    }

    /** From end to end of the contact, on the face the row is driven from. */
    private void guide(DrivenContact contact, FastenerRow row, MarkedFace on, List<DrivenContact> all) {
        Driver driver = contact.driver();
        List<ClearLine.Span> spans = ClearLine.of(driver.place(), row.across(), 0);
        Vector head = contact.driven().get(0).fastener().head();
        Vector way = driver.place().frame().w();
        Vector out = on.out();
        List<Vector> ends = new ArrayList<>();
        for (double at :
                List.of(spans.get(0).from(), spans.get(spans.size() - 1).to())) {
            Vector end = driver.place().at(at, row.across());
            ends.add(end.plus(way.times(head.minus(end).dot(out) / way.dot(out))));
        }
        on.guide(ends.get(0), ends.get(1), line(contact, all));
    }

    /** {@code middle of Floor}, {@code middle of left Side}; a line that is not the middle is told as what it lies over. */
    private String line(DrivenContact contact, List<DrivenContact> all) {
        Driver driver = contact.driver();
        Piece into = driver.into().get(0);
        long equals = all.stream()
                .filter(c -> c.driver().through().equals(driver.through()))
                .map(c -> c.driver().into().get(0))
                .filter(p -> p.part().equals(into.part()))
                .distinct()
                .count();
        PlacedSolid.Reach reach = bodies.of(into).project(driver.place().frame().v());
        double wide = reach.most() - reach.least();
        boolean middle = contact.rows().size() == 1
                && Math.abs(wide - driver.place().across().inMillimetres()) < 0.1;
        String name = equals > 1 ? names.word(into) + " " + into.part() : into.part();
        return (middle ? "middle of " : "over ") + name;
    }

    /** Holes and openings are marked on any face, a rabbet on the face it is cut into. */
    private void cutOut(Piece piece, PlacedSolid solid) {
        Solid shape = solid.solid();
        Set<SheetSide> sides = new TreeSet<>();
        shape.pockets().forEach(pocket -> sides.add(pocket.side()));
        boolean lies =
                faces.containsKey(piece) && faces.get(piece).values().stream().anyMatch(f -> !f.isEdge());
        if (!shape.outline().openings().isEmpty() && sides.isEmpty() && !lies) {
            sides.add(SheetSide.INSIDE);
        }
        sides.forEach(side -> wide(piece, solid, side));
    }

    // ---- one drawing for all that are alike -----------------------------------------------------------------------

    private List<Marking> drawings(PlannedPart part, List<MarkedFace> all) {
        List<Marking> drawings = new ArrayList<>();
        List<MarkedFace> left = new ArrayList<>(all);
        boolean more = all.stream().collect(Collectors.groupingBy(MarkedFace::piece)).values().stream()
                .anyMatch(ofOne -> ofOne.size() > 1);
        while (!left.isEmpty()) {
            MarkedFace first = left.get(0);
            List<MarkedFace> alike =
                    left.stream().filter(f -> f == first || f.isLike(first)).toList();
            List<MarkedFace> mirrored = left.stream()
                    .filter(f -> !alike.contains(f) && f.isMirrorOf(first))
                    .toList();
            left.removeAll(alike);
            left.removeAll(mirrored);
            drawings.add(words.marking(part, alike, mirrored, more));
        }
        return drawings;
    }
}
