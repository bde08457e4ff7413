import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.spi.ToolProvider;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.ArchiveEntry;
import org.apache.commons.compress.archivers.ArchiveOutputStream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveOutputStream;
import org.apache.commons.compress.archivers.tar.TarConstants;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.compressors.gzip.GzipCompressorOutputStream;
import org.apache.commons.compress.compressors.gzip.GzipParameters;

/**
 * Makes {@code target/application/heeltap}, which needs no Java on the machine, and its archive. The build runs it as a
 * single source file with the finished jar on the class path.
 *
 * <p>A JDK without jlink, jpackage or the modules to link makes no folder: that is said, and the jar is whole without.
 */
public final class ApplicationFolder {
    /** What jdeps finds for the jar, and services: character sets, languages of numbers and dates, logging. */
    private static final String MODULES = "java.base,java.desktop,java.logging,java.naming,java.scripting,"
            + "java.security.jgss,java.sql,java.xml,java.xml.crypto,jdk.charsets,jdk.localedata,jdk.unsupported,"
            + "jdk.zipfs";

    private static final Path TARGET = Path.of("target");
    private static final Path WORK = TARGET.resolve("application");
    private static final String SYSTEM = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    private static final boolean WINDOWS = SYSTEM.startsWith("windows");
    private static final boolean MAC = SYSTEM.startsWith("mac");

    /** @param args version, and the time stamp of the build */
    public static void main(String[] args) throws IOException, InterruptedException {
        delete(WORK);
        Optional<ToolProvider> jlink = ToolProvider.findFirst("jlink");
        Optional<ToolProvider> jpackage = ToolProvider.findFirst("jpackage");
        boolean modules = Files.isDirectory(Path.of(System.getProperty("java.home"), "jmods"))
                || Runtime.version().feature() >= 24;
        if (jlink.isEmpty() || jpackage.isEmpty() || !modules) {
            Files.createDirectories(WORK);
            Files.writeString(WORK.resolve("not-made.txt"), "This JDK has no jlink, jpackage or jmods.\n");
            System.out.println("No application folder is made: " + System.getProperty("java.home")
                    + " has no jlink, no jpackage or no folder jmods. target/heeltap.jar is whole without it."
                    + " To get one, build with a full JDK (some systems have the jmods in a package of their own).");
            return;
        }
        Instant stamp = Instant.parse(args[1]);
        Path runtime = WORK.resolve("runtime");
        run(jlink.get(), "--add-modules", MODULES, "--strip-java-debug-attributes", "--no-header-files",
                "--no-man-pages", "--output", runtime.toString());
        Path input = Files.createDirectories(WORK.resolve("input"));
        Files.copy(TARGET.resolve("heeltap.jar"), input.resolve("heeltap.jar"));
        Path image = image(jpackage.get(), runtime, input, args[0]);
        Path app = MAC ? image.resolve("Contents/app") : WINDOWS ? image.resolve("app") : image.resolve("lib/app");
        shareClasses(runtime, app);
        Path docs = MAC ? image.resolve("Contents/Resources/doc") : image.resolve("doc");
        copyDocuments(docs);
        archive(image, stamp);
        delete(input);
        delete(runtime);
    }

    private static Path image(ToolProvider jpackage, Path runtime, Path input, String version) {
        List<String> arguments = new ArrayList<>(List.of(
                "--type", "app-image", "--name", "heeltap", "--app-version", version, "--dest", WORK.toString(),
                "--input", input.toString(), "--main-jar", "heeltap.jar", "--main-class", "heeltap.cli.Main",
                "--runtime-image", runtime.toString(),
                // a review is a short run: the quick compiler and the small collector halve its work
                "--java-options", "-XX:TieredStopAtLevel=1", "--java-options", "-XX:+UseSerialGC",
                "--java-options", "-Djava.awt.headless=true",
                "--java-options", "-XX:SharedArchiveFile=$APPDIR/heeltap.jsa", "--java-options", "-Xshare:auto",
                "--java-options", "-Xlog:disable", "--java-options", "-Xlog:all=error:stderr"));
        if (WINDOWS) {
            arguments.add("--win-console");
        }
        run(jpackage, arguments.toArray(String[]::new));
        return WORK.resolve(MAC ? "heeltap.app" : "heeltap");
    }

    /**
     * The archive of the runtime's own classes that a review uses. Those of the jar would tie the archive to the place
     * where it was made (Java 17 compares the path of the jar), so that it would be void wherever the folder is
     * unpacked. Written under another name first: a cut-off archive crashes the runtime, a missing one only costs time.
     */
    private static void shareClasses(Path runtime, Path app) throws IOException, InterruptedException {
        Path java = runtime.resolve(WINDOWS ? "bin/java.exe" : "bin/java").toAbsolutePath();
        Path classes = WORK.resolve("classes.txt");
        process(java.toString(), "-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true",
                "-XX:DumpLoadedClassList=" + classes, "-jar", TARGET.resolve("heeltap.jar").toString(),
                "review", "sample-input", "--quiet", "--out", WORK.resolve("sample").toString());
        Path written = WORK.resolve("heeltap.jsa.part");
        process(java.toString(), "-XX:+UseG1GC", "-Xshare:dump", "-XX:SharedClassListFile=" + classes,
                "-XX:SharedArchiveFile=" + written);
        Files.move(written, app.resolve("heeltap.jsa"), StandardCopyOption.ATOMIC_MOVE);
        delete(WORK.resolve("sample"));
        Files.delete(classes);
    }

    private static void copyDocuments(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (String name : List.of("README.md", "LICENSE")) {
            Files.copy(Path.of(name), folder.resolve(name));
        }
        try (Stream<Path> pages = Files.list(TARGET.resolve("manual"))) {
            for (Path page : pages.sorted().toList()) {
                Files.copy(page, folder.resolve(page.getFileName()));
            }
        }
    }

    private static void archive(Path image, Instant stamp) throws IOException {
        String machine = System.getProperty("os.arch");
        String system = WINDOWS ? "windows" : MAC ? "macos" : "linux";
        Path file = TARGET.resolve("heeltap-" + system + "-" + machine + (WINDOWS ? ".zip" : ".tar.gz"));
        Files.deleteIfExists(file);
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part));
                ArchiveOutputStream<? extends ArchiveEntry> archive = WINDOWS ? zip(out) : tar(out);
                Stream<Path> entries = Files.walk(image)) {
            for (Path entry : entries.sorted().toList()) {
                add(archive, entry, image.getParent().relativize(entry).toString().replace('\\', '/'), stamp);
            }
            archive.finish();
        }
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
    }

    private static TarArchiveOutputStream tar(OutputStream out) throws IOException {
        GzipParameters quick = new GzipParameters();
        quick.setCompressionLevel(4);
        TarArchiveOutputStream tar = new TarArchiveOutputStream(new GzipCompressorOutputStream(out, quick));
        tar.setLongFileMode(TarArchiveOutputStream.LONGFILE_POSIX);
        return tar;
    }

    private static ZipArchiveOutputStream zip(OutputStream out) {
        return new ZipArchiveOutputStream(out);
    }

    private static <E extends ArchiveEntry> void add(
            ArchiveOutputStream<E> archive, Path file, String name, Instant stamp) throws IOException {
        boolean folder = Files.isDirectory(file, LinkOption.NOFOLLOW_LINKS);
        ArchiveEntry entry;
        if (archive instanceof TarArchiveOutputStream && Files.isSymbolicLink(file)) {
            TarArchiveEntry link = new TarArchiveEntry(name, TarConstants.LF_SYMLINK);
            link.setLinkName(Files.readSymbolicLink(file).toString());
            entry = link;
        } else if (archive instanceof TarArchiveOutputStream) {
            TarArchiveEntry plain = new TarArchiveEntry(folder ? name + "/" : name);
            plain.setMode(folder || Files.isExecutable(file) ? 0755 : 0644);
            plain.setSize(folder ? 0 : Files.size(file));
            entry = plain;
        } else {
            entry = new ZipArchiveEntry(folder ? name + "/" : name);
        }
        if (entry instanceof TarArchiveEntry tar) {
            tar.setLastModifiedTime(FileTime.from(stamp));
        } else if (entry instanceof ZipArchiveEntry zip) {
            zip.setLastModifiedTime(FileTime.from(stamp));
        }
        @SuppressWarnings("unchecked")
        E typed = (E) entry;
        archive.putArchiveEntry(typed);
        if (!folder && !(archive instanceof TarArchiveOutputStream && Files.isSymbolicLink(file))) {
            Files.copy(file, archive);
        }
        archive.closeArchiveEntry();
    }

    private static void run(ToolProvider tool, String... arguments) {
        java.io.StringWriter said = new java.io.StringWriter();
        java.io.PrintWriter writer = new java.io.PrintWriter(said);
        int code = tool.run(writer, writer, arguments);
        if (code != 0) {
            throw new IllegalStateException(tool.name() + " ended with " + code + ": " + said);
        }
    }

    private static void process(String... command) throws IOException, InterruptedException {
        Path log = WORK.resolve("log.txt");
        int code = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start().waitFor();
        if (code != 0) {
            throw new IllegalStateException(String.join(" ", command) + " ended with " + code + ": " + Files.readString(log));
        }
        Files.delete(log);
    }

    private static void delete(Path path) throws IOException {
        if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> all = Files.walk(path)) {
            all.sorted((a, b) -> b.compareTo(a)).forEach(each -> {
                try {
                    each.toFile().setWritable(true);
                    Files.delete(each);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }
}
