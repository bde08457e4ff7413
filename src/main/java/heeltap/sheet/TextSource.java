package heeltap.sheet;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;

/**
 * The characters of a text file.
 *
 * @param file where it is
 * @param encoding its character set
 * @param marks whether it holds characters that are left out
 */
record TextSource(Path file, TextEncoding encoding, boolean marks) {
    Reader open() throws IOException {
        Reader reader = encoding.open(file);
        return marks ? new CleanText(reader) : reader;
    }
}
