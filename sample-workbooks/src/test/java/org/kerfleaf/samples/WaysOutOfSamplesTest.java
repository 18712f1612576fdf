package org.kerfleaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.plan.PlacedPart;
import org.kerfleaf.plan.Plan;
import org.kerfleaf.shape.Vector;

/** Which way pieces come out of their places, and off what, as their words were said. */
class WaysOutOfSamplesTest {
    private static final double SIN = StrictMath.sin(StrictMath.toRadians(30));
    private static final double COS = StrictMath.cos(StrictMath.toRadians(30));

    private final Plan plan = Sample.CABINET.plan();

    private static List<PlacedPart> pieces(Plan plan, String part) {
        return plan.placed().stream().filter(p -> p.solid().part().equals(part)).toList();
    }

    private void comes(String part, int piece, Vector along, String off) {
        PlacedPart placed = pieces(plan, part).get(piece);
        Vector way = placed.wayOut().along();
        assertThat(way.minus(along).length())
                .as("%s %d goes %s", part, piece, way)
                .isCloseTo(0, within(1e-9));
        assertThat(plan.placed().get(placed.wayOut().off()).solid().part())
                .as(part)
                .isEqualTo(off);
    }

    @Test
    void cabinet_walls_comeOffTheFloor() {
        comes("Back", 0, Vector.Y, "Floor");
        comes("Side", 0, Vector.X.negated(), "Floor");
        comes("Side", 1, Vector.X, "Floor");
        comes("Front", 0, Vector.Y.negated(), "Floor");
        // It stands clear over the floor and touches the back: it comes out to the front.
        comes("Shelf", 0, Vector.Y.negated(), "Floor");
        comes("Shelf", 1, Vector.Y.negated(), "Floor");
    }

    @Test
    void cabinet_roof_comesOffSquareToItsSlopeAndTrimOffItsOwnHalf() {
        comes("Roof", 0, new Vector(-SIN, 0, COS), "Floor");
        comes("Roof", 1, new Vector(SIN, 0, COS), "Floor");
        comes("Ridge cap", 0, Vector.Z, "Floor");
        comes("Ridge cap", 1, Vector.Z, "Floor");
        List<PlacedPart> rakes = pieces(plan, "Rake trim");
        assertThat(rakes).hasSize(4);
        for (PlacedPart rake : rakes) {
            boolean inFront = rake.solid().bounds().middle().y()
                    < pieces(plan, "Roof").get(0).solid().bounds().middle().y();
            assertThat(rake.wayOut().along().y()).isCloseTo(inFront ? -1 : 1, within(1e-9));
            PlacedPart roof = plan.placed().get(rake.wayOut().off());
            assertThat(Math.abs(roof.solid().bounds().middle().x()
                            - rake.solid().bounds().middle().x()))
                    .isLessThan(30);
        }
        comes("Eave trim", 0, new Vector(-COS, 0, -SIN), "Roof");
        comes("Eave trim", 1, new Vector(COS, 0, -SIN), "Roof");
    }

    @Test
    void cabinet_door_comesOffTheFrontAndThePaneOutOfItsRabbet() {
        comes("Door", 0, Vector.Y.negated(), "Front");
        comes("Pane", 0, Vector.Y, "Door");
    }

    @Test
    void cabinet_mountedBuild_comesUpAsOneAndThePostStays() {
        comes("Floor", 0, Vector.Z, "Seat");
        comes("Seat", 0, Vector.Z, "Post");
        comes("Arm", 0, Vector.Y.negated(), "Post");
        comes("Arm", 1, Vector.Y, "Post");
        assertThat(pieces(plan, "Post").get(0).wayOut().stays()).isTrue();
    }

    @Test
    void allSamples_everyPieceLeadsToOneThatStays() {
        for (Sample sample : Sample.ALL) {
            Plan some = sample.plan();
            for (PlacedPart part : some.placed()) {
                PlacedPart at = part;
                for (int i = 0; i < some.placed().size() && !at.wayOut().stays(); i++) {
                    assertThat(at.wayOut().along().length()).isCloseTo(1, within(1e-9));
                    at = some.placed().get(at.wayOut().off());
                }
                assertThat(at.wayOut().stays()).as(part.solid().part()).isTrue();
            }
        }
    }
}
