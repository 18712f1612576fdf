package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class FillsTest {
    /** Everywhere the face painted last is the nearest one. */
    private static void check(List<Body> bodies, View view) {
        Projection projection = new Projection(bodies, view);
        List<ViewFace> order = Fills.inOrder(projection);
        double times = 10;
        double wide = (projection.maxX() - projection.minX()) / times;
        double high = (projection.maxY() - projection.minY()) / times;
        OnPaper paper = new OnPaper(times, -projection.minX() / times, projection.maxY() / times);
        FaceMask mask = new FaceMask(order, List.of(), paper, wide, high);
        int compared = 0;
        for (int cell = 0; cell < mask.size(); cell += 7) {
            if (mask.face(cell) == 0 || mask.room(cell) < 0.8) {
                continue;
            }
            double x = mask.x(cell) * times + projection.minX();
            double y = projection.maxY() - mask.y(cell) * times;
            double nearest = order.stream()
                    .filter(f -> f.holds(x, y, 0))
                    .mapToDouble(f -> f.depth(x, y))
                    .max()
                    .orElseThrow();
            ViewFace shown = order.get(mask.face(cell) - 1);
            assertThat(shown.depth(x, y))
                    .as("%s at %s, %s in view %s", bodies.get(shown.body()).part(), x, y, view.name())
                    .isGreaterThan(nearest - 0.05);
            compared++;
        }
        assertThat(compared).isGreaterThan(500);
    }

    @Test
    void inOrder_cabinet_theNearestFaceIsOnTop() {
        check(SampleBuild.bodies(), View.DIMETRIC);
        check(SampleBuild.bodies(), View.FRONT);
        check(SampleBuild.bodies(), View.SIDE);
    }

    @Test
    void inOrder_takenApart_theNearestFaceIsOnTop() {
        check(SampleBuild.apart().stream().map(Body::of).toList(), View.DIMETRIC);
    }
}
