package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.kerfleaf.shape.PlacedSolid;

class ViewDrawingTest {
    private static final List<View> VIEWS = List.of(View.FRONT, View.SIDE, View.TOP);

    private static ViewDrawing drawing(View view, double width, double height) {
        return ViewDrawing.of(SampleBuild.cabinet(), view, SampleBuild.sizes(), SampleBuild.WORDS, width, height);
    }

    @ParameterizedTest
    @CsvSource({"180, 250", "94, 150", "94, 300", "250, 120"})
    void of_cabinet_fitsItsRoomAndNothingIsOutside(double width, double height) {
        for (View view : VIEWS) {
            ViewDrawing drawing = drawing(view, width, height);
            assertThat(drawing.width()).as(view.name()).isLessThanOrEqualTo(width);
            assertThat(drawing.height()).as(view.name()).isLessThanOrEqualTo(height);
            BufferedImage image =
                    PngSheet.image(drawing.width() + 10, drawing.height() + 10, 8, ink -> drawing.paint(ink, 5, 5));
            assertThat(BuildPictureTest.isWhiteAround(image, 38))
                    .as(view.name())
                    .isTrue();
        }
    }

    @ParameterizedTest
    @CsvSource({"180, 250", "94, 150", "94, 300", "250, 120"})
    void values_ofCabinet_meetNoOther(double width, double height) {
        for (View view : VIEWS) {
            List<Rectangle2D> values = drawing(view, width, height).values();
            assertThat(values).hasSizeGreaterThan(4);
            for (Rectangle2D a : values) {
                assertThat(values).as(view.name()).noneMatch(b -> a != b && a.intersects(b));
            }
        }
    }

    @Test
    void of_onePart_isTrueToScale() {
        PlacedSolid side = SampleBuild.cabinet().get(1).solid();
        List<Shown> shown = List.of(Shown.plain(side, ""));
        ViewDrawing drawing = ViewDrawing.of(shown, View.SIDE, List.of(), SampleBuild.WORDS, 100, 100);
        BufferedImage image = PngSheet.image(drawing.width(), drawing.height(), 20, ink -> drawing.paint(ink, 0, 0));
        int row = image.getHeight() / 2;
        int first = -1;
        int last = -1;
        for (int x = 0; x < image.getWidth(); x++) {
            if ((image.getRGB(x, row) & 0xff) < 128) {
                first = first < 0 ? x : first;
                last = x;
            }
        }
        double line = drawing.scale().times() > 8 ? Ink.MIDDLE : Ink.WIDE;
        double measured = ((last - first + 1) / 20.0 - line) * drawing.scale().times();
        assertThat(measured).isCloseTo(11 * 25.4, within(0.1 * drawing.scale().times()));
    }

    @Test
    void of_sizesAlongTheSight_areLeftOut() {
        List<Measure> overall = Measure.overall(SampleBuild.cabinet());
        for (View view : VIEWS) {
            ViewDrawing drawing = ViewDrawing.of(SampleBuild.cabinet(), view, overall, SampleBuild.WORDS, 180, 250);
            assertThat(drawing.values()).hasSize(2);
        }
    }

    @Test
    void of_dimetric_isRefused() {
        assertThatThrownBy(() -> drawing(View.DIMETRIC, 180, 250))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("dimetric")
                .hasMessageContaining("front, side and top");
    }
}
