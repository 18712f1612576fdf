package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Angle;

/** Seams of the cabinet, worked from its sizes: W 22, D 11, E 24, t 23/32, a slope of 30 degrees. */
class SolidSeamsTest {
    private static final List<PlacedSolid> CABINET =
            CabinetSolids.all().stream().filter(s -> !s.part().equals("Pane")).toList();
    private static final SolidSeams SEAMS = new FinishedBuild(CABINET).seams();

    private static double inside(String a, String b) {
        return SEAMS.seams().stream()
                        .filter(s -> s.inside()
                                && s.a().part().equals(a)
                                && s.b().part().equals(b))
                        .mapToDouble(Seam::length)
                        .sum()
                / 25.4;
    }

    @Test
    void inside_cabinet_everyCornerOfTheRoom() {
        double t = 0.71875;
        double inner = 24 + t * StrictMath.tan(StrictMath.PI / 6);
        double slope = 11 / StrictMath.cos(StrictMath.PI / 6);
        assertThat(inside("Floor", "Side")).isEqualTo(2 * 11, within(1e-6));
        assertThat(inside("Floor", "Back")).isEqualTo(22, within(1e-6));
        assertThat(inside("Floor", "Front")).isEqualTo(22, within(1e-6));
        assertThat(inside("Side", "Back"))
                .as("less the floor and two shelves")
                .isEqualTo(2 * (inner - 3 * t), within(1e-6));
        assertThat(inside("Side", "Front")).isEqualTo(2 * (inner - t), within(1e-6));
        assertThat(inside("Back", "Shelf")).isEqualTo(88, within(1e-6));
        assertThat(inside("Side", "Shelf")).isEqualTo(64 + 4 * t, within(1e-6));
        assertThat(inside("Back", "Roof") + inside("Front", "Roof")).isEqualTo(4 * slope, within(1e-5));
        assertThat(inside("Side", "Roof") + inside("Roof", "Roof")).isEqualTo(33, within(1e-6));
        assertThat(SEAMS.inside().inInches()).isEqualTo(396.6, within(0.05));
    }

    @Test
    void inside_beforeTheRoof_withoutItsSeams() {
        List<PlacedSolid> there = CABINET.stream()
                .filter(s -> List.of("Floor", "Side", "Back", "Front", "Shelf").contains(s.part()))
                .toList();
        assertThat(SEAMS.inside(there).inInches()).isEqualTo(312.8, within(0.05));
    }

    @Test
    void seams_underTheEaves_areOutside() {
        assertThat(SEAMS.seams())
                .filteredOn(s -> s.a().part().equals("Side") && s.b().part().equals("Roof"))
                .filteredOn(s -> !s.inside())
                .hasSize(2)
                .allMatch(s -> Math.abs(s.length() / 25.4 - 11) < 1e-6);
    }

    @Test
    void inside_cabinetTurnedAndMoved_theSame() {
        Vector axis = new Vector(0.3, -0.5, 0.8);
        for (int degrees : new int[] {17, 90, 211}) {
            List<PlacedSolid> turned = CABINET.stream()
                    .map(s -> s.at(s.pose()
                            .turnedAbout(new Vector(10, 20, 30), axis, Angle.ofDegrees(degrees))
                            .moved(new Vector(9000, -4000, 100))))
                    .toList();
            SolidSeams seams = new FinishedBuild(turned).seams();
            assertThat(seams.inside().inInches()).isEqualTo(SEAMS.inside().inInches(), within(1e-4));
            assertThat(seams.outside().inInches()).isEqualTo(SEAMS.outside().inInches(), within(1e-4));
        }
    }

    @Test
    void seams_openBox_hasNoInside() {
        assertThat(new FinishedBuild(PlanterSolids.all()).seams().inside().isZero())
                .isTrue();
    }

    @Test
    void seams_airIsInNoWood() {
        assertThat(SEAMS.seams()).allMatch(s -> CABINET.stream().noneMatch(p -> p.holds(s.air())));
    }
}
