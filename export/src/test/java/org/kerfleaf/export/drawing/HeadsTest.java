package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.CabinetSolids;
import org.kerfleaf.shape.PlacedSolid;
import org.kerfleaf.shape.Vector;

class HeadsTest {
    private static final double T = 23 / 32.0;

    private static DrivenFastener screw(double x, double y, double z, Vector way) {
        Vector head = new Vector(x * 25.4, y * 25.4, z * 25.4);
        return new DrivenFastener(
                DrivenFastener.Kind.SCREW, head, head.plus(way.times(42)), Optional.of(Length.ofInches(0.138)));
    }

    private static List<Shown> box(String... parts) {
        List<Shown> shown = new ArrayList<>();
        for (PlacedSolid solid : CabinetSolids.all()) {
            if (List.of(parts).contains(solid.part())) {
                shown.add(Shown.of(solid, SampleBuild.letter(solid.part()), Shown.State.NEW));
            }
        }
        return shown;
    }

    @Test
    void heads_onTheFarSide_areLeftOut() {
        List<DrivenFastener> driven = List.of(
                screw(1, -T, T / 2, Vector.Y),
                screw(1, 11 + T, T / 2, Vector.Y.negated()),
                screw(22 + T, 5, T / 2, Vector.X.negated()),
                screw(-T, 5, T / 2, Vector.X));
        BuildPicture picture = BuildPicture.of(box("Floor", "Side", "Back", "Front"), driven, View.DIMETRIC, 150, 120);
        // In front and on the right one stands before them; the back and the left side are turned away.
        assertThat(picture.heads()).hasSize(2);
    }

    @Test
    void head_inFrontView_standsAtItsPlace_itsLineTowardsTheEyeIsAPoint() {
        List<DrivenFastener> driven = List.of(screw(3, -T, 10, Vector.Y), screw(13, -T, 20, Vector.Y));
        BuildPicture picture = BuildPicture.of(box("Front"), driven, View.FRONT, 150, 120);
        List<Heads.Head> heads = picture.heads();
        assertThat(heads).hasSize(2);
        double times = picture.scale().times();
        assertThat((heads.get(1).x() - heads.get(0).x()) * times).isCloseTo(10 * 25.4, within(1e-6));
        assertThat((heads.get(0).y() - heads.get(1).y()) * times).isCloseTo(10 * 25.4, within(1e-6));
        assertThat(heads)
                .allSatisfy(h -> assertThat(StrictMath.hypot(h.endX() - h.x(), h.endY() - h.y()))
                        .isCloseTo(0, within(1e-6)));
    }

    /** Whatever is driven, letters and their circles stay clear of heads and centre lines. */
    @Test
    void letters_keepClearOfHeadsAndTheirLines() {
        List<DrivenFastener> driven = new ArrayList<>();
        for (double at = 1; at < 22; at += 3) {
            driven.add(screw(at, -T, T / 2, Vector.Y));
            driven.add(screw(22 + T, at / 2, at, Vector.X.negated()));
        }
        BuildPicture picture = BuildPicture.of(box("Floor", "Side", "Back", "Front"), driven, View.DIMETRIC, 150, 120);
        assertThat(picture.heads()).hasSize(driven.size());
        for (LetterPlaces.Place letter : picture.letters()) {
            for (Heads.Head head : picture.heads()) {
                double room = java.awt.geom.Line2D.ptSegDist(
                        head.x(), head.y(), head.endX(), head.endY(), letter.x(), letter.y());
                assertThat(room).as("%s and %s", letter, head).isGreaterThan(Signs.LETTER / 2);
            }
        }
    }
}
