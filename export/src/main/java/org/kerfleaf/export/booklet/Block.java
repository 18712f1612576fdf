package org.kerfleaf.export.booklet;

import java.util.List;
import org.kerfleaf.export.drawing.Ink;

/** Something that is set as wide as it is told and says how high that makes it. */
interface Block {
    double height(double width);

    /** Paints itself from its upper left corner. */
    void paint(Ink ink, double x, double y, double width);

    /** The pieces it may be broken into where it is too high for a page. */
    default List<Block> broken(double width) {
        return List.of(this);
    }

    /** Paints something at a place. */
    interface Painter {
        void paint(Ink ink, double x, double y, double width);
    }

    /** Nothing, so high. */
    static Block space(double height) {
        return picture(height, (ink, x, y, width) -> {});
    }

    /** Something of a fixed height. */
    static Block picture(double height, Painter painter) {
        return new Block() {
            @Override
            public double height(double width) {
                return height;
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                painter.paint(ink, x, y, width);
            }
        };
    }

    /** Blocks one below the other. */
    static Block stack(List<? extends Block> blocks) {
        List<Block> all = List.copyOf(blocks);
        return new Block() {
            @Override
            public double height(double width) {
                return all.stream().mapToDouble(block -> block.height(width)).sum();
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                double top = y;
                for (Block block : all) {
                    block.paint(ink, x, top, width);
                    top += block.height(width);
                }
            }

            @Override
            public List<Block> broken(double width) {
                return all;
            }
        };
    }

    /** A block with room to its left and right. */
    static Block inset(double left, double right, Block block) {
        return new Block() {
            @Override
            public double height(double width) {
                return block.height(width - left - right);
            }

            @Override
            public void paint(Ink ink, double x, double y, double width) {
                block.paint(ink, x + left, y, width - left - right);
            }

            @Override
            public List<Block> broken(double width) {
                return block.broken(width - left - right).stream()
                        .map(part -> inset(left, right, part))
                        .toList();
            }
        };
    }
}
