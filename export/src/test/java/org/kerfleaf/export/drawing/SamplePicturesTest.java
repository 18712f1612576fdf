package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.kerfleaf.joint.Marking;

/** Writes sample pictures to {@code target/pictures}, to be looked at. */
class SamplePicturesTest {
    private static final double PHONE = 94;
    private static final double PAPER = 180;

    static void write(String name, double width, double height, Consumer<Ink> painting) {
        try {
            Path file = Files.createDirectories(Path.of("target", "pictures")).resolve(name + ".png");
            try (OutputStream out = Files.newOutputStream(file)) {
                PngSheet.write(width, height, 6, painting, out);
            }
            assertThat(Files.size(file)).isGreaterThan(1000);
        } catch (IOException failed) {
            throw new java.io.UncheckedIOException(failed);
        }
    }

    private static void picture(String name, List<Shown> shown, double width, double height) {
        BuildPicture picture = BuildPicture.of(shown, View.DIMETRIC, width, height);
        assertThat(picture.width()).isLessThanOrEqualTo(width);
        assertThat(picture.height()).isLessThanOrEqualTo(height);
        write(name, picture.width(), picture.height(), ink -> picture.paint(ink, 0, 0));
    }

    @Test
    void paint_cabinet_onPaper() {
        picture("cover-paper", SampleBuild.cabinet(), PAPER, 200);
    }

    @Test
    void paint_cabinet_onPhone() {
        picture("cover-phone", SampleBuild.cabinet(), PHONE, 150);
    }

    @Test
    void paint_roofStep() {
        picture("step-paper", SampleBuild.roofStep(), PAPER, 130);
        picture("step-phone", SampleBuild.roofStep(), PHONE, 110);
    }

    @Test
    void paint_takenApart() {
        picture("apart-paper", SampleBuild.apart(), PAPER, 240);
        picture("apart-phone", SampleBuild.apart(), PHONE, 150);
    }

    private static void view(String name, View view, double width, double height) {
        ViewDrawing drawing =
                ViewDrawing.of(SampleBuild.cabinet(), view, SampleBuild.sizes(), SampleBuild.WORDS, width, height);
        assertThat(drawing.width()).isLessThanOrEqualTo(width);
        assertThat(drawing.height()).isLessThanOrEqualTo(height);
        write(name, drawing.width(), drawing.height(), ink -> drawing.paint(ink, 0, 0));
    }

    @Test
    void paint_views_onPaper() {
        view("front-paper", View.FRONT, PAPER, 240);
        view("side-paper", View.SIDE, PAPER, 240);
        view("top-paper", View.TOP, PAPER, 240);
    }

    @Test
    void paint_views_onPhone() {
        view("front-phone", View.FRONT, PHONE, 150);
        view("side-phone", View.SIDE, PHONE, 150);
    }

    private static void part(String name, Marking marking, double width, double height) {
        PartDrawing drawing = PartDrawing.of(marking, SampleBuild.WORDS, width, height);
        assertThat(drawing.width()).isLessThanOrEqualTo(width);
        assertThat(drawing.height()).isLessThanOrEqualTo(height);
        write(name, drawing.width(), drawing.height(), ink -> drawing.paint(ink, 0, 0));
    }

    @Test
    void paint_parts() {
        part("part-back-paper", SampleBuild.backMarking(), PAPER, 200);
        part("part-back-phone", SampleBuild.backMarking(), PHONE, 150);
        part("part-side-paper", SampleBuild.marking("Side"), PAPER, 200);
        part("part-door-paper", SampleBuild.marking("Door"), PAPER, 200);
        part("part-rake-paper", SampleBuild.marking("Rake trim"), PAPER, 200);
    }
}
