package org.kerfleaf.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BuildPictureTest {
    private static BuildPicture cover(double width, double height) {
        return BuildPicture.of(SampleBuild.cabinet(), View.DIMETRIC, width, height);
    }

    /** Whether all is white outside a drawing that is painted 5 mm from the edges. */
    static boolean isWhiteAround(BufferedImage image, int border) {
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                boolean outside =
                        x < border || y < border || x >= image.getWidth() - border || y >= image.getHeight() - border;
                if (outside && (image.getRGB(x, y) & 0xff) < 200) {
                    return false;
                }
            }
        }
        return true;
    }

    @ParameterizedTest
    @CsvSource({"180, 240", "94, 150", "90, 90", "60, 200"})
    void of_cabinet_fitsItsRoomAndPaintsNothingOutside(double width, double height) {
        BuildPicture picture = cover(width, height);
        assertThat(picture.width()).isLessThanOrEqualTo(width);
        assertThat(picture.height()).isLessThanOrEqualTo(height);
        BufferedImage image =
                PngSheet.image(picture.width() + 10, picture.height() + 10, 8, ink -> picture.paint(ink, 5, 5));
        assertThat(isWhiteAround(image, 38)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"180, 240", "94, 150"})
    void of_cabinet_everyPartIsPointedAtOrNamed(double width, double height) {
        BuildPicture picture = cover(width, height);
        List<String> pointed =
                picture.letters().stream().map(LetterPlaces.Place::letter).toList();
        assertThat(pointed).doesNotHaveDuplicates();
        Set<String> all = new HashSet<>(pointed);
        all.addAll(picture.notPointedAt());
        Set<String> letters = SampleBuild.cabinet().stream().map(Shown::letter).collect(Collectors.toSet());
        assertThat(all).isEqualTo(letters);
        // The floor lies inside, the back behind: nobody can point at them.
        assertThat(picture.notPointedAt()).contains("A", "C").doesNotContain("B", "D", "F", "J", "L");
    }

    @ParameterizedTest
    @CsvSource({"180, 240", "94, 150", "180, 100"})
    void letters_takenApart_crossNothing(double width, double height) {
        BuildPicture picture = BuildPicture.of(SampleBuild.apart(), View.DIMETRIC, width, height);
        List<LetterPlaces.Place> letters = picture.letters();
        assertThat(letters).hasSizeGreaterThanOrEqualTo(8);
        for (LetterPlaces.Place a : letters) {
            assertThat(a.x()).isBetween(Signs.LETTER / 2 - 0.01, picture.width() - Signs.LETTER / 2 + 0.01);
            for (LetterPlaces.Place b : letters) {
                if (a != b) {
                    assertThat(StrictMath.hypot(a.x() - b.x(), a.y() - b.y())).isGreaterThan(Signs.LETTER);
                    assertThat(Line2D.linesIntersect(
                                    a.x(), a.y(), a.dotX(), a.dotY(), b.x(), b.y(), b.dotX(), b.dotY()))
                            .as("%s and %s", a, b)
                            .isFalse();
                }
            }
        }
    }

    @Test
    void scale_heightOnPaper_isTheHeightOfTheBuild() {
        List<Shown> noLetters = SampleBuild.cabinet().stream()
                .map(s -> Shown.plain(s.solid(), ""))
                .filter(s -> s.solid().part().equals("Front"))
                .toList();
        BuildPicture picture = BuildPicture.of(noLetters, View.FRONT, 180, 200);
        BufferedImage image = PngSheet.image(picture.width(), picture.height(), 20, ink -> picture.paint(ink, 0, 0));
        int middle = image.getWidth() / 2;
        int first = -1;
        int last = -1;
        for (int y = 0; y < image.getHeight(); y++) {
            if ((image.getRGB(middle, y) & 0xff) < 128) {
                first = first < 0 ? y : first;
                last = y;
            }
        }
        // Foot to peak: 24 in and half the wall's width at 30 degrees; the lines stand half outside.
        double peak = (24 + (22 + 2 * 23 / 32.0) / 2 * StrictMath.tan(StrictMath.toRadians(30))) * 25.4;
        double wide = picture.scale().times() >= 8 ? Ink.MIDDLE : Ink.WIDE;
        double measured = ((last - first + 1) / 20.0 - wide) * picture.scale().times();
        // A peak's round corner reaches a little less or more than a level line: a tenth of a millimetre on paper.
        assertThat(measured).isCloseTo(peak, within(0.15 * picture.scale().times()));
    }

    @Test
    void of_twice_isTheSame() {
        assertThat(svg()).isEqualTo(svg());
    }

    private static String svg() {
        BuildPicture picture = cover(180, 240);
        return SvgSheet.of(
                "Cover", picture.width(), picture.height(), SvgSheet.Letters.OUTLINES, ink -> picture.paint(ink, 0, 0));
    }

    @Test
    void of_step_newPartsAreHeavyAndOldOnesThin() {
        BuildPicture picture = BuildPicture.of(SampleBuild.roofStep(), View.DIMETRIC, 180, 240);
        assertThat(picture.letters()).extracting(LetterPlaces.Place::letter).containsExactly("F");
        String svg = SvgSheet.of(
                "Step", picture.width(), picture.height(), SvgSheet.Letters.OUTLINES, ink -> picture.paint(ink, 0, 0));
        assertThat(svg).contains("stroke-width:0.2;").doesNotContain("stroke-width:0.35;");
    }
}
