package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.joint.GuideLine;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.measure.Length;
import org.kerfleaf.shape.Outline;
import org.kerfleaf.shape.SheetSide;
import org.kerfleaf.shape.Solid;
import org.kerfleaf.shape.Vector;

class PartDrawingTest {
    @ParameterizedTest
    @CsvSource({"180, 200", "94, 150"})
    void of_back_fitsItsRoomAndNothingIsOutside(double width, double height) {
        PartDrawing drawing = PartDrawing.of(SampleBuild.backMarking(), SampleBuild.WORDS, width, height);
        assertThat(drawing.width()).isLessThanOrEqualTo(width);
        assertThat(drawing.height()).isLessThanOrEqualTo(height);
        BufferedImage image =
                PngSheet.image(drawing.width() + 10, drawing.height() + 10, 8, ink -> drawing.paint(ink, 5, 5));
        assertThat(BuildPictureTest.isWhiteAround(image, 38)).isTrue();
    }

    @Test
    void paint_back_saysFacesHolesAndStations() {
        PartDrawing drawing = PartDrawing.of(SampleBuild.backMarking(), SampleBuild.WORDS, 180, 200);
        String svg = SvgSheet.of(
                "Back", drawing.width(), drawing.height(), SvgSheet.Letters.TEXT, ink -> drawing.paint(ink, 0, 0));
        assertThat(svg).contains("C Back", "INSIDE up", "left vent", "middle of Floor", ">21<", ">24<");
    }

    @Test
    void paint_hole_standsAtItsPlaceFromTheOrigin() {
        PartDrawing drawing = PartDrawing.of(SampleBuild.backMarking(), SampleBuild.WORDS, 180, 200);
        BufferedImage image = PngSheet.image(drawing.width(), drawing.height(), 20, ink -> drawing.paint(ink, 0, 0));
        // The left vent: its middle 5 in from the left edge and 21 in up.
        double x = drawing.originX() + 5 * 25.4 / drawing.scale().times();
        double y = drawing.originY() - 21 * 25.4 / drawing.scale().times();
        double radius = 0.5 * 25.4 / drawing.scale().times();
        assertThat(image.getRGB((int) (x * 20), (int) (y * 20)) & 0xff).isLessThan(160);
        double slant = StrictMath.sqrt(0.5);
        assertThat(image.getRGB((int) ((x + radius * slant) * 20), (int) ((y - radius * slant) * 20)) & 0xff)
                .isLessThan(100);
        assertThat(image.getRGB((int) ((x + radius / 2) * 20), (int) ((y - radius / 2) * 20)) & 0xff)
                .isGreaterThan(200);
    }

    /** With its outside up, what stands 5 in from the left of 20 in stands 15 in from it. */
    @Test
    void paint_outsideUp_showsHolesFromTheOtherEnd() {
        Solid oneVent = Solid.of(
                Outline.rectangle(Length.ofInches(20), Length.ofInches(10))
                        .opening(
                                "vent",
                                Outline.circle(Length.ofInches(1)).moved(Length.ofInches(5), Length.ofInches(6))),
                Length.ofInches(0.75));
        for (SheetSide up : SheetSide.values()) {
            Marking marking = new Marking("Plate", "A Plate", oneVent, up, List.of(), List.of(), "", "", "");
            PartDrawing drawing = PartDrawing.of(marking, SampleBuild.WORDS, 180, 200);
            String svg = SvgSheet.of(
                    "Plate", drawing.width(), drawing.height(), SvgSheet.Letters.TEXT, ink -> drawing.paint(ink, 0, 0));
            String from = up == SheetSide.INSIDE ? ">5<" : ">15<";
            assertThat(svg).contains(from, ">6<").doesNotContain(up == SheetSide.INSIDE ? ">15<" : ">5<");
            BufferedImage image =
                    PngSheet.image(drawing.width(), drawing.height(), 20, ink -> drawing.paint(ink, 0, 0));
            double times = drawing.scale().times();
            double x = drawing.originX() + (up == SheetSide.INSIDE ? 5 : 15) * 25.4 / times;
            double y = drawing.originY() - 6 * 25.4 / times;
            assertThat(image.getRGB((int) (x * 20), (int) (y * 20)) & 0xff).isLessThan(160);
        }
    }

    /** On a narrow part words find no room beside their line: then they stand below the drawing. */
    @Test
    void paint_lineWithoutRoomForItsWords_saysThemBelow() {
        Solid strip = Solid.of(Outline.rectangle(Length.ofInches(60), Length.ofInches(0.75)), Length.ofInches(0.75));
        Marking marking = new Marking(
                "Strip",
                "A Strip",
                strip,
                SheetSide.INSIDE,
                List.of(new GuideLine(
                        new Vector(0, 0.375 * 25.4, 0), new Vector(60 * 25.4, 0.375 * 25.4, 0), "middle of Leg")),
                List.of(),
                "",
                "",
                "");
        PartDrawing drawing = PartDrawing.of(marking, SampleBuild.WORDS, 180, 200);
        String svg = SvgSheet.of(
                "Strip", drawing.width(), drawing.height(), SvgSheet.Letters.TEXT, ink -> drawing.paint(ink, 0, 0));
        assertThat(svg).contains("in up: middle of Leg");
    }

    @Test
    void ring_ofACircle_liesOnIt() {
        double[] ring = Waste.ring(
                Outline.circle(Length.ofMillimetres(50)).moved(Length.ofMillimetres(10), Length.ofMillimetres(20)));
        assertThat(ring.length).isEqualTo(2 * 4 * 24);
        for (int i = 0; i < ring.length; i += 2) {
            assertThat(StrictMath.hypot(ring[i] - 10, ring[i + 1] - 20)).isCloseTo(25, within(1e-6));
        }
    }

    @Test
    void hatch_ofARectangle_isEmpty_ofAGableIsItsTwoCorners() {
        OnPaper paper = new OnPaper(1, 0, 0);
        Outline rectangle = Outline.rectangle(Length.ofMillimetres(100), Length.ofMillimetres(80));
        assertThat(Waste.hatch(rectangle, paper).getCurrentPoint()).isNull();
        Outline slope =
                Outline.trapezoid(Length.ofMillimetres(100), Length.ofMillimetres(40), Length.ofMillimetres(80));
        var box = Waste.hatch(slope, paper).getBounds2D();
        // Paper counts down: the waste is the upper left triangle.
        assertThat(List.of(box.getMinX(), box.getMinY())).allMatch(v -> Math.abs(v) < 82);
        assertThat(box.getMinY()).isGreaterThanOrEqualTo(-80.001);
        assertThat(box.getMaxY()).isLessThanOrEqualTo(-40 + 0.001);
    }
}
