package org.kerfleaf.finish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Percent;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.sketch.Bead;
import org.kerfleaf.sketch.Paint;

class FinishNeedTest {
    private static final Volume GALLON = Volume.ofGallons(1);
    private static final Volume QUART = Volume.ofGallons(0.25);
    private static final Volume CARTRIDGE = Volume.ofGallons(10.1 / 128);

    /** Arithmetic: 60 ft², 2 coats at 300 ft²/gal are 0.4 gal, so 2 quarts. */
    @Test
    void paint_twoCoats_isTwoQuarts() {
        FinishLine line = FinishNeed.paint("latex", squareFeet(60), 2, squareFeet(300), GALLON, QUART);

        assertThat(line.need().value().inGallons()).isCloseTo(0.4, within(1e-9));
        assertThat(line.packs().value()).isEqualTo(2);
        assertThat(line.coats()).isEqualTo(2);
    }

    /** Arithmetic: 7.5 m² twice at 8 m²/L are 1.875 L: one can of 2.5 L or two of 1 L. */
    @Test
    void paint_metric_countsCans() {
        Figure<Area> area = Figure.said(Area.ofSquareMillimetres(7.5e6), "this test");
        Figure<Area> covers = Figure.said(Area.ofSquareMillimetres(8e6), "this test");
        Volume litre = Volume.ofLitres(1);

        assertThat(FinishNeed.paint("oil", area, 2, covers, litre, Volume.ofLitres(2.5))
                        .packs()
                        .value())
                .isEqualTo(1);
        assertThat(FinishNeed.paint("oil", area, 2, covers, litre, litre)
                        .packs()
                        .value())
                .isEqualTo(2);
        assertThat(FinishNeed.paint("oil", area, 2, covers, litre, litre)
                        .need()
                        .value()
                        .inLitres())
                .isCloseTo(1.875, within(1e-9));
    }

    /** The cold frame: 16.79 + 16.47 ft², primer 0.111 gal, two top coats 0.222 gal, one quart of each. */
    @Test
    void paint_coldFrame_isAQuartOfEach() {
        Figure<Area> faces = squareFeet((2418 + 2372.0) / 144);

        assertThat(FinishNeed.paint("primer", faces, 1, squareFeet(300), GALLON, QUART)
                        .need()
                        .value()
                        .inGallons())
                .isCloseTo(0.111, within(5e-4));
        FinishLine top = FinishNeed.paint("top", faces, 2, squareFeet(300), GALLON, QUART);
        assertThat(top.need().value().inGallons()).isCloseTo(0.222, within(5e-4));
        assertThat(top.packs().value()).isEqualTo(1);
    }

    @Test
    void paint_exactlyOneCan_isOneCan() {
        assertThat(FinishNeed.paint("p", squareFeet(350.0 / 4), 1, squareFeet(350), GALLON, QUART)
                        .packs()
                        .value())
                .isEqualTo(1);
        assertThat(FinishNeed.paint("p", squareFeet(350.0 / 4 + 0.01), 1, squareFeet(350), GALLON, QUART)
                        .packs()
                        .value())
                .isEqualTo(2);
    }

    @Test
    void paint_noCoat_isRefused() {
        assertThatThrownBy(() -> FinishNeed.paint("latex", squareFeet(1), 0, squareFeet(1), GALLON, QUART))
                .hasMessageContaining("latex", "0 coats");
    }

    /** Volume arithmetic for a cartridge of 10.1 US fl oz, round bead, in feet. */
    @ParameterizedTest
    @CsvSource({"8, 123.77", "16, 30.94", "20, 19.80", "32, 7.74"})
    void goesFor_cartridge_isTheVolumesLength(long sixtyFourths, double feet) {
        assertThat(FinishNeed.goesFor(CARTRIDGE, round(Length.ofSixtyFourths(sixtyFourths)))
                                .value()
                                .inInches()
                        / 12)
                .isCloseTo(feet, within(0.005));
    }

    /** The same cartridge in a square joint and smoothed into a corner. */
    @ParameterizedTest
    @CsvSource({"8, 97.21, 194.42", "16, 24.30, 48.61", "20, 15.55, 31.11", "32, 6.08, 12.15"})
    void goesFor_otherBeads_isTheirVolumesLength(long sixtyFourths, double joint, double corner) {
        Length wide = Length.ofSixtyFourths(sixtyFourths);

        assertThat(FinishNeed.goesFor(CARTRIDGE, new Bead(wide, wide, Bead.Lies.IN_JOINT))
                                .value()
                                .inInches()
                        / 12)
                .isCloseTo(joint, within(0.005));
        assertThat(FinishNeed.goesFor(CARTRIDGE, new Bead(wide, wide, Bead.Lies.IN_CORNER))
                                .value()
                                .inInches()
                        / 12)
                .isCloseTo(corner, within(0.005));
    }

    /** The paint trade's formula, 1604 ft² a gallon at a mil; its worked examples. */
    @ParameterizedTest
    @CsvSource({"100, 1, 1604.17", "65, 5, 208.54", "42, 1.6, 421.09", "35, 1.44, 389.90"})
    void coverage_bySolids_isTheTradesFormula(double solids, double mil, double squareFeet) {
        Paint.Film film = new Paint.Film(Percent.of(solids), Length.ofInches(mil / 1000));

        assertThat(FinishNeed.coverage(film, GALLON).value().inSquareFeet()).isCloseTo(squareFeet, within(0.01));
    }

    @Test
    void left_ofTwoQuarts_isWhatIsNotNeeded() {
        FinishLine line = FinishNeed.paint("latex", squareFeet(60), 2, squareFeet(300), GALLON, QUART);

        assertThat(line.left().value().inGallons()).isCloseTo(0.1, within(1e-9));
        assertThat(((Area) line.goes().value()).inSquareFeet()).isCloseTo(75, within(1e-6));
    }

    private static Bead round(Length across) {
        return new Bead(across, across, Bead.Lies.ROUND);
    }

    /** 310 mL at 6 mm round is 10.96 m. */
    @Test
    void goesFor_metricCartridge_isElevenMetres() {
        assertThat(FinishNeed.goesFor(Volume.ofLitres(0.31), round(Length.ofMillimetres(6)))
                                .value()
                                .inMillimetres()
                        / 1000)
                .isCloseTo(10.96, within(0.005));
    }

    @Test
    void caulk_waste_takesASecondCartridge() {
        Bead quarter = round(Length.ofSixtyFourths(16));
        Length goes = FinishNeed.goesFor(CARTRIDGE, quarter).value();
        Figure<Length> enough = Figure.said(goes.times(1 / 1.16), "this test");
        Figure<Length> tooMuch = Figure.said(goes.times(1 / 1.14), "this test");

        assertThat(FinishNeed.caulk("latex", enough, quarter, CARTRIDGE).packs().value())
                .isEqualTo(1);
        assertThat(FinishNeed.caulk("latex", tooMuch, quarter, CARTRIDGE)
                        .packs()
                        .value())
                .isEqualTo(2);
        assertThat(FinishNeed.caulk("latex", enough, quarter, CARTRIDGE)
                        .need()
                        .reason()
                        .in(MeasureStyle.INCHES))
                .contains("waste 0.15", "common practice");
    }

    /** Glue makers' guides: 0.5 m² at 220 g/m² is 110 g, 100 mL. */
    @Test
    void glue_halfASquareMetre_isAHundredMillilitres() {
        Figure<Area> contact = Figure.said(Area.ofSquareMillimetres(0.5e6), "this test");
        FinishLine line = FinishNeed.glue("PVA", contact, Optional.empty(), Volume.ofLitres(0.237));

        assertThat(FinishNeed.glueMass(contact.value(), Optional.empty())
                        .value()
                        .grams())
                .isCloseTo(110, within(1e-9));
        assertThat(line.need().value().inLitres()).isCloseTo(0.1, within(1e-9));
        assertThat(line.packs().value()).isEqualTo(1);
    }

    private static Figure<Area> squareFeet(double number) {
        return Figure.said(Area.ofSquareMillimetres(number * 92_903.04), "this test");
    }
}
