package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;
import org.kerfleaf.cutting.SheetCut;
import org.kerfleaf.cutting.SheetLayout;
import org.kerfleaf.export.SamplePlan;
import org.kerfleaf.measure.Length;
import org.kerfleaf.plan.Plan;

class SheetDrawingTest {
    private static final int PIXELS_PER_MM = 40;
    private static final Plan PLAN = SamplePlan.inches();
    private static final SheetLayout SHEET = PLAN.sheets().get(0);

    private static SheetDrawing drawing() {
        return SheetDrawing.of(SHEET, new Lettering(PLAN.parts(), PLAN.style()), 180, 120);
    }

    private static BufferedImage painted(SheetDrawing drawing) {
        var image = new BufferedImage(
                (int) (drawing.width() * PIXELS_PER_MM) + 1,
                (int) (drawing.height() * PIXELS_PER_MM) + 1,
                BufferedImage.TYPE_INT_RGB);
        var g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        drawing.paint(Ink.on(g, 1.0 / PIXELS_PER_MM), 0, 0);
        g.dispose();
        return image;
    }

    @Test
    void of_drawing_fitsItsRoom() {
        assertThat(drawing().width()).isLessThanOrEqualTo(180);
        assertThat(drawing().height()).isLessThanOrEqualTo(120);
    }

    @Test
    void paint_firstCut_standsAtItsPlaceInItsTrueWidth() {
        SheetDrawing drawing = drawing();
        BufferedImage image = painted(drawing);
        SheetCut first = SHEET.cuts().get(0);
        double expected = drawing.sheetLeft() + drawing.scale().paper(first.at());
        // A third of the way up, where no mark stands on the cut.
        int row = (int) ((drawing.height() - 30) * PIXELS_PER_MM);
        int start = (int) (expected * PIXELS_PER_MM) - 30;
        int black = 0;
        int at = -1;
        for (int x = start; x < start + 60; x++) {
            if ((image.getRGB(x, row) & 0xff) < 100) {
                at = at < 0 ? x : at;
                black++;
            }
        }
        assertThat(at / (double) PIXELS_PER_MM).isCloseTo(expected, within(0.05));
        double kerf = drawing.scale().paper(Length.ofSixtyFourths(8));
        assertThat(black / (double) PIXELS_PER_MM).isCloseTo(kerf, within(0.05));
    }

    @Test
    void notNamed_cabinet_isEmpty() {
        assertThat(drawing().notNamed()).isEmpty();
    }
}
