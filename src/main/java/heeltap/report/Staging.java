package heeltap.report;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.io.FileUtils;

/**
 * Puts finished files into a folder all or nothing. They are first written into a hidden folder inside the target, so
 * that each move is a rename; what stood there before waits beside them and comes back when a move fails.
 */
final class Staging {
    /** Writes everything into an empty folder. */
    interface Content {
        void writeTo(Path folder) throws IOException;
    }

    private Staging() {}

    /**
     * @param names the files and folders that {@code content} writes; those in {@code target} by these names are replaced
     * @throws IOException if anything cannot be written; {@code target} is then as it was
     */
    static void replace(Path target, List<String> names, Content content) throws IOException {
        Deque<Path> made = makeFolders(target);
        try {
            Path stage = Files.createTempDirectory(target, ".heeltap-");
            try {
                Path fresh = Files.createDirectory(stage.resolve("new"));
                Path old = Files.createDirectory(stage.resolve("old"));
                content.writeTo(fresh);
                swap(target, names, fresh, old);
            } finally {
                delete(stage);
            }
        } catch (IOException | RuntimeException e) {
            removeEmpty(made);
            throw e;
        }
    }

    private static void swap(Path target, List<String> names, Path fresh, Path old) throws IOException {
        Deque<Path[]> undo = new ArrayDeque<>();
        try {
            for (String name : names) {
                Path place = target.resolve(name);
                if (Files.exists(place)) {
                    Files.move(place, old.resolve(name));
                    undo.push(new Path[] {old.resolve(name), place});
                }
                Files.move(fresh.resolve(name), place);
                undo.push(new Path[] {place, fresh.resolve(name)});
            }
            for (String name : names) {
                keepForeign(old.resolve(name), target.resolve(name), undo);
            }
        } catch (IOException e) {
            for (Path[] move : undo) {
                Files.move(move[0], move[1]);
            }
            throw e;
        }
    }

    /** Whatever else someone keeps in a folder of ours stays there; only tables of an earlier run go. */
    private static void keepForeign(Path oldFolder, Path newFolder, Deque<Path[]> undo) throws IOException {
        if (!Files.isDirectory(oldFolder)) {
            return;
        }
        try (Stream<Path> entries = Files.list(oldFolder)) {
            for (Path entry : entries.sorted().toList()) {
                Path place = newFolder.resolve(entry.getFileName().toString());
                if (!entry.toString().endsWith(".csv") && !Files.exists(place)) {
                    Files.move(entry, place);
                    undo.push(new Path[] {place, entry});
                }
            }
        }
    }

    private static Deque<Path> makeFolders(Path target) throws IOException {
        Deque<Path> missing = new ArrayDeque<>();
        for (Path p = target.toAbsolutePath(); p != null && !Files.exists(p); p = p.getParent()) {
            missing.push(p);
        }
        Deque<Path> made = new ArrayDeque<>();
        try {
            for (Path folder : missing) {
                Files.createDirectory(folder);
                made.push(folder);
            }
        } catch (IOException e) {
            removeEmpty(made);
            throw e;
        }
        if (!Files.isDirectory(target)) {
            throw new java.nio.file.NotDirectoryException(target.toString());
        }
        return made;
    }

    private static void removeEmpty(Deque<Path> made) throws IOException {
        for (Path folder : made) {
            Files.deleteIfExists(folder);
        }
    }

    private static void delete(Path folder) throws IOException {
        FileUtils.deleteDirectory(folder.toFile());
    }
}
