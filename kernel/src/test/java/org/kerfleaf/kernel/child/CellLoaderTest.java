package org.kerfleaf.kernel.child;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellLoaderTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "java.io.File",
                "java.nio.file.Files",
                "java.net.Socket",
                "java.lang.Thread",
                "java.lang.ClassLoader",
                "java.lang.ProcessBuilder",
                "java.lang.reflect.Method",
                "sun.misc.Unsafe",
                "org.kerfleaf.kernel.wire.Channel",
            })
    void loadClass_beyondTheWords_isKept(String name) {
        assertThatThrownBy(() -> new CellLoader(List.of(), true).loadClass(name))
                .isInstanceOf(SecurityException.class)
                .hasMessage("This reaches for %s, which is not allowed here.", name);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "java.util.List",
                "java.lang.Math",
                "java.lang.invoke.LambdaMetafactory",
                "org.kerfleaf.words.Words",
                "org.joda.money.Money"
            })
    void loadClass_ofTheWords_isGiven(String name) throws ClassNotFoundException {
        assertThat(new CellLoader(List.of(), true).loadClass(name))
                .hasToString(Class.forName(name).toString());
    }

    @Test
    void loadClass_allowed_givesAll() throws ClassNotFoundException {
        assertThat(new CellLoader(List.of(), false).loadClass("java.io.File")).isEqualTo(java.io.File.class);
    }
}
