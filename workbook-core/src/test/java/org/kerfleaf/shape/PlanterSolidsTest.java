package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.saw.CompoundMitre;

/** The splayed planter: settings from the cuts' normals against a saw maker's printed chart (seen in a copy) and the formula. */
class PlanterSolidsTest {
    private static final Solid SIDE = PlanterSolids.side();

    private static Cut cut(String name) {
        return SIDE.cuts().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void cuts_settingsOfTheSaw() {
        assertThat(cut("RIGHT").tilt().inDegrees()).isEqualTo(28.8791, within(5e-5));
        assertThat(cut("RIGHT").inSheet().inDegrees()).isEqualTo(-8.4988, within(5e-5));
        assertThat(cut("LEFT").tilt().inDegrees()).isEqualTo(28.8791, within(5e-5));
        assertThat(cut("TOP").tilt().inDegrees()).isEqualTo(15, within(1e-9));
        assertThat(cut("BOTTOM").tilt().inDegrees()).isEqualTo(15, within(1e-9));
        assertThat(PlanterSolids.BLANK).isEqualTo(315.4059, within(5e-5));
    }

    @Test
    void volume_sixSides_theShellsClosedForm() {
        double wall = 2 * PlanterSolids.T / PlanterSolids.LEAN.cos();
        double top = 250 * StrictMath.sqrt(3);
        double shell =
                frustum(PlanterSolids.FLATS_BOTTOM, top) - frustum(PlanterSolids.FLATS_BOTTOM - wall, top - wall);
        assertThat(6 * SIDE.volume().cubicMillimetres()).isEqualTo(shell, within(1e-3));
        assertThat(SIDE.unclosed()).isLessThan(1e-6);
        // Outlines are rounded to 1 nm: over 12 mitres of 311 by 18 mm that is a few hundredths of a mm³.
        Solid bevelled = PlanterSolids.bevelledSide();
        assertThat(6 * bevelled.volume().cubicMillimetres()).isEqualTo(shell, within(0.05));
        assertThat(bevelled.unclosed()).isLessThan(1e-6);
        assertThat(bevelled.area("RIGHT").squareMillimetres())
                .isEqualTo(SIDE.area("RIGHT").squareMillimetres(), within(1e-3));
    }

    /** Of regular hexagons: h/3 (A + B + √AB), A = √3/2 · flats². */
    private static double frustum(double lower, double upper) {
        double a = StrictMath.sqrt(3) / 2 * lower * lower;
        double b = StrictMath.sqrt(3) / 2 * upper * upper;
        return PlanterSolids.HIGH / 3 * (a + b + StrictMath.sqrt(a * b));
    }

    @Test
    void bevelled_readsAsTheCompoundMitreOfTheTrade() {
        // Facts 3.4: sides at S from level, n sides; a pyramid's panel is sawn so that its neighbours meet upright.
        for (int n : new int[] {4, 5, 6, 8}) {
            for (double s : new double[] {5, 15, 20, 40, 45, 60, 75}) {
                CompoundMitre formula = CompoundMitre.ofSides(Angle.ofDegrees(s), n);
                Angle mitre = formula.mitre().value();
                Angle tilt = formula.tilt().value();
                Cut corner = corner(s, n);
                assertThat(corner.tilt().inDegrees()).isEqualTo(tilt.inDegrees(), within(1e-6));
                assertThat(Math.abs(corner.inSheet().inDegrees())).isEqualTo(mitre.inDegrees(), within(1e-6));
            }
        }
    }

    /** The upright plane between two neighbours, in the frame of a side that leans back to S from level. */
    private static Cut corner(double s, int n) {
        double lean = StrictMath.toRadians(s);
        double half = StrictMath.PI / n;
        Pose side = Pose.of(Vector.ZERO, Vector.X, new Vector(0, StrictMath.cos(lean), StrictMath.sin(lean)));
        Vector upright = new Vector(StrictMath.cos(half), StrictMath.sin(half), 0);
        Vector normal = new Vector(upright.dot(side.u()), upright.dot(side.v()), upright.dot(side.w()));
        return new Cut("corner", normal, 0);
    }

    @Test
    void corner_valuesOfThePrintedChart() {
        assertThat(corner(60, 4).tilt().inDegrees()).isEqualTo(37.76, within(0.005));
        assertThat(corner(60, 4).inSheet().inDegrees()).isEqualTo(26.57, within(0.005));
        assertThat(corner(45, 8).tilt().inDegrees()).isEqualTo(15.70, within(0.005));
        // Facts 3.5, a roof of 12 in 12 with four sides; 3.6, crown at spring 38 in a square corner, S = 52.
        assertThat(corner(45, 4).inSheet().inDegrees()).isEqualTo(35.26, within(0.005));
        assertThat(corner(52, 4).inSheet().inDegrees()).isEqualTo(31.62, within(0.005));
        assertThat(corner(52, 4).tilt().inDegrees()).isEqualTo(33.86, within(0.005));
    }
}
