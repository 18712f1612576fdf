package org.kerfleaf.export.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

class UserFolderTest {
    private static final Path HOME = Path.of("home").toAbsolutePath();
    private static final Path ELSEWHERE = Path.of("elsewhere").toAbsolutePath();

    private static Path of(String system, Map<String, String> environment) {
        return UserFolder.of(system, HOME.toString(), environment);
    }

    @Test
    void of_linux_isInTheFolderForSettings() {
        assertThat(of("Linux", Map.of())).isEqualTo(HOME.resolve(".config/kerfleaf"));
        assertThat(of("Linux", Map.of("XDG_CONFIG_HOME", ELSEWHERE.toString())))
                .isEqualTo(ELSEWHERE.resolve("kerfleaf"));
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "no such path there")
    void of_linuxWithAPathThatIsNotAbsolute_isAsIfNothingWereSaid() {
        for (String said : new String[] {"", " ", "config", "a\0b"}) {
            assertThat(of("Linux", Map.of("XDG_CONFIG_HOME", said))).isEqualTo(HOME.resolve(".config/kerfleaf"));
        }
    }

    @Test
    void of_windows_isInTheRoamingFolder() {
        assertThat(of("Windows 11", Map.of("APPDATA", ELSEWHERE.toString()))).isEqualTo(ELSEWHERE.resolve("kerfleaf"));
        assertThat(of("Windows 11", Map.of())).isEqualTo(HOME.resolve("AppData/Roaming/kerfleaf"));
    }

    @Test
    void of_mac_isInTheLibrary() {
        assertThat(of("Mac OS X", Map.of("XDG_CONFIG_HOME", ELSEWHERE.toString())))
                .isEqualTo(HOME.resolve("Library/Application Support/kerfleaf"));
    }
}
