package org.kerfleaf.samples;

import org.junit.jupiter.api.Test;

class XTest {
    @Test
    void a() {}
}
