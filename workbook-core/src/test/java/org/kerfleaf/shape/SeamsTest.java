package org.kerfleaf.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;

class SeamsTest {
    private static final Length T = Length.ofInches(1L);

    private static Box box(long x, long y, long z, long dx, long dy, long dz) {
        return Box.of(Length.ofInches(dx), Length.ofInches(dy), Length.ofInches(dz))
                .lowAt(Axis.X, Length.ofInches(x))
                .lowAt(Axis.Y, Length.ofInches(y))
                .lowAt(Axis.Z, Length.ofInches(z));
    }

    /** A tray 20 by 10 inside, 8 high inside, walls and floor 1 thick. */
    private static final List<Box> TRAY = List.of(
            box(0, 0, 0, 20, 10, 1),
            box(-1, 0, 0, 1, 10, 9),
            box(20, 0, 0, 1, 10, 9),
            box(-1, 10, 0, 22, 1, 9),
            box(-1, -1, 0, 22, 1, 9));

    @Test
    void inside_openTray_isTheFloorsEdgeAndFourCorners() {
        assertThat(new Seams(TRAY).inside()).isEqualTo(Length.ofInches(2L * (20 + 10) + 4 * 8));
    }

    @Test
    void inside_trayWithoutItsFront_hasNoInside() {
        assertThat(new Seams(TRAY.subList(0, 4)).inside()).isEqualTo(Length.ZERO);
    }

    @Test
    void inside_shelfAcross_addsItsEdgesAndInterruptsTheCorners() {
        List<Box> withShelf = new ArrayList<>(TRAY);
        // 6 deep, against the back, 3 up.
        withShelf.add(box(0, 4, 4, 20, 6, 1));
        long shelf = 2 * 20 + 2 * (6 + 6 + 1);
        assertThat(new Seams(withShelf).inside()).isEqualTo(Length.ofInches(2L * (20 + 10) + 4 * 8 + shelf - 2));
    }

    @Test
    void contact_faceOnFace_hasItsRectangle() {
        Contact contact = TRAY.get(0).contact(TRAY.get(1)).orElseThrow();
        assertThat(contact.axis()).isEqualTo(Axis.X);
        assertThat(contact.along()).isEqualTo(Length.ofInches(10L));
        assertThat(contact.across()).isEqualTo(T);
        assertThat(contact.area().inSquareInches()).isEqualTo(10);
    }

    @Test
    void contact_edgeOnEdge_isNone() {
        assertThat(box(0, 0, 0, 1, 1, 1).contact(box(1, 1, 0, 1, 1, 1))).isEmpty();
    }

    @Test
    void contact_gap_isNone() {
        Box apart = box(0, 0, 1, 20, 10, 1).movedBy(Axis.Z, new Length(1));
        assertThat(TRAY.get(0).contact(apart)).isEmpty();
    }

    @Test
    void clash_overlap_isTheSharedBox() {
        Box both = box(0, 0, 0, 4, 4, 4).clash(box(3, 2, -1, 4, 4, 4)).orElseThrow();
        assertThat(both.size(MeasureStyle.INCHES)).isEqualTo("1 × 2 × 3 in");
    }

    @Test
    void clash_touching_isNone() {
        assertThat(box(0, 0, 0, 4, 4, 4).clash(box(4, 0, 0, 4, 4, 4))).isEmpty();
    }
}
