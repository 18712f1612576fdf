package org.kerfleaf.export.drawing;

/**
 * Places along an edge for marks that must not touch, each as near as possible to where it belongs: least squares, by
 * pooling neighbours that collide. Where an edge is too short for all of them, they stand in more rows than one.
 *
 * @param places where each mark stands, in the order given
 * @param rows how many rows they need; mark {@code i} stands in row {@code i % rows}, row 0 next to the edge
 */
record Spread(double[] places, int rows) {
    /** Spreads places in rising order between two ends so that two of a row are that far apart. */
    static Spread of(double[] wanted, double from, double to, double apart) {
        int n = wanted.length;
        int rows = rows(n, to - from, apart);
        double step = apart / rows;
        double[] sum = new double[n];
        int[] count = new int[n];
        int pools = 0;
        for (int i = 0; i < n; i++) {
            sum[pools] = wanted[i] - i * step;
            count[pools++] = 1;
            while (pools > 1 && sum[pools - 2] / count[pools - 2] > sum[pools - 1] / count[pools - 1]) {
                sum[pools - 2] += sum[pools - 1];
                count[pools - 2] += count[--pools];
            }
        }
        double[] places = new double[n];
        int i = 0;
        for (int pool = 0; pool < pools; pool++) {
            double first = Math.max(from, Math.min(sum[pool] / count[pool], to - (n - 1) * step));
            for (int k = 0; k < count[pool]; k++, i++) {
                places[i] = first + i * step;
            }
        }
        return new Spread(places, rows);
    }

    /** How many rows so many marks need along an edge of that length. */
    static int rows(int marks, double length, double apart) {
        return Math.max(1, (int) Math.ceil((marks - 1) * apart / length - 1e-9));
    }
}
