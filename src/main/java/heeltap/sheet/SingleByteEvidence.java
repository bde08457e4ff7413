package heeltap.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Chooses among the character sets of one byte a character: each byte beyond ASCII is decoded by each, and speaks for
 * it where a letter stands as letters do in a word and against it where a sign splits a word. Windows-1252 is taken
 * unless another is clearly better.
 */
final class SingleByteEvidence {
    private static final String USUAL = "windows-1252";

    /** ISO-8859-15 differs from the usual one in eight places; the others put letters elsewhere. */
    private static final List<String> OTHERS = List.of("ISO-8859-15", "windows-1250", "x-MacRoman", "IBM850");

    /** One letter for it and one split word against the usual set. */
    private static final int CLEAR = 3;

    private static final String LETTERS = "àâäáãåæçèéêëìíîïñòóôöõøœùúûüÿßąćęłńśźżčďěňřšťůýžőűășț";
    private static final String SIGNS = "’‘“”„…–—•€£™®°½¼¾\u00a0";
    private static final String SIGNS_IN_WORDS = "’–—\u00a0";
    private static final char EURO = '€';

    private final Charset charset;
    private final char[] table = new char[256];
    private int score;
    private int euros;

    private SingleByteEvidence(String name) {
        charset = Charset.forName(name);
        byte[] one = new byte[1];
        for (int i = 0; i < table.length; i++) {
            one[0] = (byte) i;
            table[i] = new String(one, charset).charAt(0);
        }
    }

    static Charset choose(Path file) throws IOException {
        List<SingleByteEvidence> candidates = new ArrayList<>(List.of(new SingleByteEvidence(USUAL)));
        OTHERS.stream()
                .filter(Charset::isSupported)
                .map(SingleByteEvidence::new)
                .forEach(candidates::add);
        weigh(file, candidates);
        SingleByteEvidence usual = candidates.get(0);
        SingleByteEvidence best = usual;
        for (SingleByteEvidence other : candidates) {
            boolean clear = other.score >= usual.score + CLEAR || (other.euros > 0 && usual.euros == 0);
            if (clear && other.score > 0 && other.score > best.score) {
                best = other;
            }
        }
        return best.charset;
    }

    private static void weigh(Path file, List<SingleByteEvidence> candidates) throws IOException {
        byte[] chunk = new byte[1 << 16];
        int before = ' ';
        int current = ' ';
        try (InputStream in = Files.newInputStream(file)) {
            for (int count = in.read(chunk); count > 0; count = in.read(chunk)) {
                for (int i = 0; i < count; i++) {
                    int after = chunk[i] & 0xff;
                    if (current > 0x7f) {
                        for (SingleByteEvidence candidate : candidates) {
                            candidate.add(before, current, after);
                        }
                    }
                    before = current;
                    current = after;
                }
            }
        }
        if (current > 0x7f) {
            for (SingleByteEvidence candidate : candidates) {
                candidate.add(before, current, ' ');
            }
        }
    }

    private void add(int before, int current, int after) {
        char c = table[current];
        score += judge(table[before], c, table[after]);
        euros += c == EURO ? 1 : 0;
    }

    private static int judge(char before, char c, char after) {
        boolean inWord = Character.isLetter(before) && Character.isLetter(after);
        if (c == '\ufffd' || Character.isISOControl(c)) {
            return -3;
        }
        if (Character.isLetter(c) && Character.getType(c) != Character.OTHER_LETTER) {
            if (Character.isUpperCase(c) && Character.isLowerCase(before)) {
                return -2;
            }
            boolean usual = LETTERS.indexOf(Character.toLowerCase(c)) >= 0;
            boolean beside = Character.isLetter(before) || Character.isLetter(after);
            return !usual ? -1 : beside ? 1 : 0;
        }
        if (SIGNS.indexOf(c) >= 0 && (!inWord || SIGNS_IN_WORDS.indexOf(c) >= 0)) {
            return 1;
        }
        return inWord ? -2 : -1;
    }
}
