package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.WayOut;
import org.kerfleaf.shape.Bounds;
import org.kerfleaf.shape.CabinetSolids;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

class TakenApartTest {
    private static final List<PlacedPart> CABINET = cabinet();

    /** The cabinet without what it stands on, with the ways its words would give. */
    private static List<PlacedPart> cabinet() {
        List<PlacedSolid> solids = CabinetSolids.all().stream()
                .filter(s -> !List.of("Post", "Arm", "Seat").contains(s.part()))
                .toList();
        List<PlacedPart> placed = new ArrayList<>();
        for (PlacedSolid solid : solids) {
            placed.add(new PlacedPart(
                    SampleBuild.letter(solid.part()), 1, 0, 0, solid.part().equals("Pane"), way(solid, solids), solid));
        }
        return placed;
    }

    private static WayOut way(PlacedSolid solid, List<PlacedSolid> all) {
        Vector middle = solid.bounds().middle();
        boolean right = middle.x() > 11 * 25.4;
        Vector side = right ? Vector.X : Vector.X.negated();
        return switch (solid.part()) {
            case "Floor" -> WayOut.STAYS;
            case "Side" -> new WayOut(side, number(all, "Floor", right));
            case "Back" -> new WayOut(Vector.Y, number(all, "Floor", right));
            case "Front", "Shelf" -> new WayOut(Vector.Y.negated(), number(all, "Floor", right));
            case "Roof" ->
                new WayOut(side.times(0.5).plus(Vector.Z.times(StrictMath.sqrt(0.75))), number(all, "Floor", right));
            case "Rake trim" ->
                new WayOut(middle.y() < 100 ? Vector.Y.negated() : Vector.Y, number(all, "Roof", right));
            case "Eave trim" -> new WayOut(side, number(all, "Roof", right));
            case "Door" -> new WayOut(Vector.Y.negated(), number(all, "Front", right));
            case "Pane" -> new WayOut(Vector.Y, number(all, "Door", right));
            default -> throw new AssertionError(solid.part());
        };
    }

    private static int number(List<PlacedSolid> all, String part, boolean right) {
        int found = -1;
        for (int i = 0; i < all.size(); i++) {
            boolean same = all.get(i).bounds().middle().x() > 11 * 25.4 == right;
            if (all.get(i).part().equals(part) && (found < 0 || same)) {
                found = i;
            }
        }
        return found;
    }

    private static TakenApart apart() {
        return TakenApart.of(CABINET, Broken.NOWHERE, View.DIMETRIC);
    }

    @Test
    void own_everyPiece_movesAlongItsWayOnly() {
        TakenApart apart = apart();
        for (int i = 0; i < CABINET.size(); i++) {
            PlacedPart part = CABINET.get(i);
            Vector own = apart.own(i);
            if (part.wayOut().stays()) {
                assertThat(apart.shift(i)).isEqualTo(Vector.ZERO);
                continue;
            }
            assertThat(own.cross(part.wayOut().along()).length()).isCloseTo(0, within(1e-9));
            assertThat(own.dot(part.wayOut().along())).isGreaterThan(20);
            Vector with = apart.shift(part.wayOut().off());
            assertThat(apart.shift(i).minus(with).minus(own).length()).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void shares_everyPiece_isSeenEnough() {
        assertThat(apart().shares()).hasSize(CABINET.size());
        for (double share : apart().shares()) {
            assertThat(share).isGreaterThanOrEqualTo(TakenApart.SHARE - 1e-9);
        }
    }

    /** The shares found another way: points of each piece's faces, hidden where a face of another is nearer. */
    @Test
    void shares_countedFaceByFace_areAsLarge() {
        TakenApart apart = apart();
        List<Body> bodies = apart.scene(Broken.NOWHERE).bodies();
        Projection projection = new Projection(bodies, View.DIMETRIC);
        double step = 7;
        double[] shares = apart.shares();
        for (int i = 0; i < bodies.size(); i++) {
            if (bodies.get(i).glass()) {
                continue;
            }
            int own = 0;
            int seen = 0;
            Projection alone = new Projection(List.of(bodies.get(i)), View.DIMETRIC);
            for (double x = alone.minX() + step / 3; x < alone.maxX(); x += step) {
                for (double y = alone.minY() + step / 3; y < alone.maxY(); y += step) {
                    double near = nearest(projection, i, true, x, y);
                    own += near > Double.NEGATIVE_INFINITY ? 1 : 0;
                    seen += near > Double.NEGATIVE_INFINITY && near >= nearest(projection, i, false, x, y) ? 1 : 0;
                }
            }
            double share = (double) seen / own;
            // Of a trim board the grid sees a few cells only.
            assertThat(share).as(bodies.get(i).part()).isGreaterThan(TakenApart.SHARE - 0.12);
            if (own > 300) {
                assertThat(share).as(bodies.get(i).part()).isCloseTo(shares[i], within(0.05));
            }
        }
    }

    private static double nearest(Projection projection, int body, boolean own, double x, double y) {
        return projection.faces().stream()
                .filter(f -> f.isFront() && f.body() == body == own)
                .filter(f -> !projection.bodies().get(f.body()).glass())
                .filter(f -> f.holds(x, y, 0))
                .mapToDouble(f -> f.depth(x, y))
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    @Test
    void shift_piecesApartAtFirst_neverGoThroughEachOther() {
        TakenApart apart = apart();
        for (int i = 0; i < CABINET.size(); i++) {
            for (int j = 0; j < CABINET.size(); j++) {
                Bounds a = CABINET.get(i).solid().bounds();
                Bounds b = CABINET.get(j).solid().bounds();
                if (!a.isNear(b, -0.1)) {
                    for (int part = 1; part <= 50; part++) {
                        Vector by = apart.shift(i).minus(apart.shift(j)).times(part / 50.0);
                        Bounds there = new Bounds(a.low().plus(by), a.high().plus(by));
                        assertThat(there.isNear(b, -0.1))
                                .as(
                                        "%s through %s",
                                        CABINET.get(i).solid().part(),
                                        CABINET.get(j).solid().part())
                                .isFalse();
                    }
                }
            }
        }
    }

    @Test
    void of_twice_isTheSame() {
        TakenApart one = apart();
        TakenApart two = apart();
        for (int i = 0; i < CABINET.size(); i++) {
            assertThat(one.shift(i)).isEqualTo(two.shift(i));
        }
    }

    @Test
    void chains_eachMovedPiece_isJoinedToItsPlace() {
        TakenApart apart = apart();
        List<Scene.Chain> chains = apart.scene(Broken.NOWHERE).chains();
        List<Vector> ways = new ArrayList<>();
        for (int i = 0; i < CABINET.size(); i++) {
            if (!CABINET.get(i).wayOut().stays()) {
                ways.add(apart.own(i));
            }
        }
        assertThat(chains).hasSameSizeAs(ways);
        for (int i = 0; i < ways.size(); i++) {
            assertThat(chains.get(i)
                            .to()
                            .minus(chains.get(i).from())
                            .minus(ways.get(i))
                            .length())
                    .isCloseTo(0, within(1e-9));
        }
    }
}
