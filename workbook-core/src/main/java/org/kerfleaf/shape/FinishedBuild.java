package org.kerfleaf.shape;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.kerfleaf.measure.Area;

/**
 * A finished build, asked again and again what lies open in it and where air gets at its seams. Its contacts are worked out once,
 * what was seen from one point of its air is known for the next question, and so is what lies open of a piece beside the same others.
 */
public final class FinishedBuild {
    private final List<PlacedSolid> pieces;
    private final List<Touching> touching;
    private final Sight sight;
    private final Map<OpenFaces.Beside, List<OpenFaces.Part>> open = new HashMap<>();

    /** @param pieces every piece: only the finished build tells inside from outside */
    public FinishedBuild(List<PlacedSolid> pieces) {
        this.pieces = List.copyOf(pieces);
        this.touching = Touching.all(pieces);
        this.sight = new Sight(pieces);
    }

    /** What of the wide faces of those pieces lies open. @param there the pieces that are there already: only they cover anything */
    public OpenFaces openFaces(List<PlacedSolid> there) {
        List<Touching> between = between(there);
        return new OpenFaces(there, between, sight, open);
    }

    /** Whether a point of its air is closed in, openings taken as closed. */
    public boolean closesIn(Vector point) {
        return sight.isInside(point);
    }

    /** What of a piece's edges lies open. @param there the pieces that are there already: only they cover anything */
    public Area openEdges(PlacedSolid piece, List<PlacedSolid> there) {
        List<Touching> between = between(there);
        return piece.solid().edges().stream()
                .map(name -> piece.solid().area(name).minus(Touching.hidden(piece, name, between)))
                .reduce(Area.ZERO, Area::plus);
    }

    private List<Touching> between(List<PlacedSolid> there) {
        Set<PlacedSolid> now = new HashSet<>(there);
        return touching.stream()
                .filter(pair -> now.contains(pair.a()) && now.contains(pair.b()))
                .toList();
    }

    public SolidSeams seams() {
        return new SolidSeams(pieces, touching, sight);
    }
}
