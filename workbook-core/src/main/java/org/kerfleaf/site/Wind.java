package org.kerfleaf.site;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.joint.Force;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Pressure;
import org.kerfleaf.measure.Ratio;
import org.kerfleaf.measure.WindSpeed;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.sketch.Exposure;

/**
 * The push of the wind on a box on a post. An estimate.
 *
 * <p>Source: ASCE 7-16. Its edition of 2022 moves the directionality factor; the two are not mixed here.
 */
public final class Wind {
    /** Directionality, ASCE 7-16 table 26.6-1 (from memory). */
    static final double KD = 0.85;

    /** Gust effect of a stiff structure, ASCE 7-16 26.11 (from memory). */
    static final double GUST = 0.85;

    /** Force coefficient of a square box about as high as wide, ASCE 7-16 chapter 29 (from memory). */
    static final double CF = 1.3;

    /** From strength level, which maps show since ASCE 7-10, to allowable stress. */
    static final double TO_ALLOWABLE_STRESS = 0.6;

    private static final String SOURCE = "ASCE 7-16 eq. 26.10-1, tables 26.10-1 and 26.11-1 (seen in copies)";
    private static final double MILLIMETRES_IN_FOOT = 304.8;

    private Wind() {}

    /**
     * Velocity pressure at a height: 0.00256 Kz Kzt Kd Ke V² (psf, mph), level ground (Kzt 1), at strength level.
     *
     * @param aboveSea height of the ground above the sea, which thins the air; zero is on the safe side
     */
    public static Figure<Pressure> pressure(WindSpeed speed, Exposure exposure, Length height, Length aboveSea) {
        double kz = hundredths(kz(exposure, height.inMillimetres() / MILLIMETRES_IN_FOOT));
        double ke = StrictMath.exp(-0.0000362 * aboveSea.inMillimetres() / MILLIMETRES_IN_FOOT);
        double mph = speed.inMilesPerHour();
        return Figure.of(
                Pressure.ofPoundsPerSquareFoot(0.00256 * kz * KD * ke * mph * mph),
                "0.00256 · Kz · Kd · Ke · V², in pounds on a square foot and miles an hour",
                SOURCE,
                given("V", speed),
                given("ground", exposure.words()),
                given("Kz", Ratio.of(kz)),
                given("Kd", Ratio.of(KD)),
                given("Ke", Ratio.of(ke)));
    }

    /** Kz at a height above grade, ASCE 7-16 table 26.10-1 with the constants of 26.11-1; under 15 ft it is that of 15 ft. */
    static double kz(Exposure exposure, double feet) {
        double alpha = switch (exposure) {
            case BUILT_UP -> 7.0;
            case OPEN_GROUND -> 9.5;
            case SHORE -> 11.5;
        };
        double gradientFeet = switch (exposure) {
            case BUILT_UP -> 1200;
            case OPEN_GROUND -> 900;
            case SHORE -> 700;
        };
        return 2.01 * StrictMath.pow(Math.max(feet, 15) / gradientFeet, 2 / alpha);
    }

    /** Kz as the table prints it, so that a reader with the table finds the same pressure. */
    private static double hundredths(double kz) {
        return Math.round(kz * 100) / 100.0;
    }

    /** The push on what is seen of a box from the side: pressure · 0.6 · G · Cf · area, at allowable stress level. */
    public static Figure<Force> push(Pressure pressure, Area seen) {
        return Figure.of(
                Force.ofNewtons(pressure.pascals() * TO_ALLOWABLE_STRESS * GUST * CF * seen.inSquareMetres()),
                "pressure · 0.6 · G · Cf · area seen from the side",
                "ASCE 7-16 2.4 and chapter 29 (Cf and G from memory)",
                given("pressure", pressure),
                given("0.6", "from strength level, which maps since ASCE 7-10 show, to allowable stress"),
                given("G", Ratio.of(GUST)),
                given("Cf", Ratio.of(CF)),
                given("area", seen));
    }
}
