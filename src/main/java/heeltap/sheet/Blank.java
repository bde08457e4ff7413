package heeltap.sheet;

/** What counts as nothing written. */
final class Blank {
    private static final char ZERO_WIDTH_SPACE = '\u200b';
    private static final char BYTE_ORDER_MARK = '\ufeff';

    private Blank() {}

    static boolean is(CharSequence text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c > ' ' && (c < 0x7f || !isSpace(c))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isSpace(char c) {
        return Character.isSpaceChar(c)
                || Character.isWhitespace(c)
                || Character.isISOControl(c)
                || c == ZERO_WIDTH_SPACE
                || c == BYTE_ORDER_MARK;
    }
}
