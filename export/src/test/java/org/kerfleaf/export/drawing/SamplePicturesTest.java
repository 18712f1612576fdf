package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

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
}
