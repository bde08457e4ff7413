package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StagingTest {
    private static final List<String> NAMES = List.of("a.pdf", "tables");

    @TempDir
    Path folder;

    @Test
    void makesTheFolderAndLeavesNothingElseBehind() throws IOException {
        Path target = folder.resolve("deep/er");
        Staging.replace(target, NAMES, content("1"));
        assertThat(tree(target)).isEqualTo(Map.of("a.pdf", "1", "tables/t.csv", "1"));
    }

    @Test
    void replacesAllTablesOfAnEarlierRunButNothingForeign() throws IOException {
        Staging.replace(folder, NAMES, content("1"));
        Files.writeString(folder.resolve("tables/stale.csv"), "old");
        Files.writeString(folder.resolve("tables/notes.txt"), "mine");
        Files.writeString(folder.resolve("2026-09-review.pdf"), "September");
        Staging.replace(folder, NAMES, content("2"));
        assertThat(tree(folder))
                .isEqualTo(Map.of(
                        "a.pdf",
                        "2",
                        "tables/t.csv",
                        "2",
                        "tables/notes.txt",
                        "mine",
                        "2026-09-review.pdf",
                        "September"));
    }

    @Test
    void aFailureWhileWritingLeavesEverything() throws IOException {
        Staging.replace(folder, NAMES, content("1"));
        Map<String, String> before = tree(folder);
        assertThatThrownBy(() -> Staging.replace(folder, NAMES, fresh -> {
                    Files.writeString(fresh.resolve("a.pdf"), "half");
                    throw new IOException("disk full");
                }))
                .hasMessage("disk full");
        assertThat(tree(folder)).isEqualTo(before);
    }

    @Test
    void aFailureWhileMovingBringsEverythingBack() throws IOException {
        Staging.replace(folder, NAMES, content("1"));
        Map<String, String> before = tree(folder);
        assertThatThrownBy(() ->
                        Staging.replace(folder, NAMES, fresh -> Files.writeString(fresh.resolve("a.pdf"), "no tables")))
                .isInstanceOf(IOException.class);
        assertThat(tree(folder)).isEqualTo(before);
    }

    @Test
    void aFileInTheWayIsAFailure() throws IOException {
        Path target = folder.resolve("taken");
        Files.writeString(target, "a file");
        assertThatThrownBy(() -> Staging.replace(target, NAMES, content("1"))).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> Staging.replace(target.resolve("below"), NAMES, content("1")))
                .isInstanceOf(IOException.class);
        assertThat(tree(folder)).isEqualTo(Map.of("taken", "a file"));
    }

    @Test
    void foldersMadeForAFailureGoAgain() {
        Path target = folder.resolve("x/y");
        assertThatThrownBy(() -> Staging.replace(target, NAMES, fresh -> {
                    throw new IOException("disk full");
                }))
                .hasMessage("disk full");
        assertThat(folder.resolve("x")).doesNotExist();
    }

    private static Staging.Content content(String text) {
        return fresh -> {
            Files.writeString(fresh.resolve("a.pdf"), text);
            Files.createDirectory(fresh.resolve("tables"));
            Files.writeString(fresh.resolve("tables/t.csv"), text);
        };
    }

    private static Map<String, String> tree(Path root) throws IOException {
        Map<String, String> tree = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                tree.put(root.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
        return tree;
    }
}
