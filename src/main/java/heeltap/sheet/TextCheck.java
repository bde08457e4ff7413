package heeltap.sheet;

import heeltap.source.Place;
import java.io.IOException;
import java.io.Reader;
import java.util.List;

/**
 * A reading of the whole text that only looks for damage.
 *
 * @param layout with which it is to be read
 * @param plain whether any reader of such files would read it the same
 * @param odd the records with stray quotes
 */
record TextCheck(TextLayout layout, boolean plain, OddPlaces odd) {
    /** @param ended whether the text ends with a line end */
    static TextCheck of(TextSource source, TextLayout layout, boolean ended, Place place) throws IOException {
        if (layout.isSpaced()) {
            return new TextCheck(layout, false, new OddPlaces(place));
        }
        Counted first = count(source, layout, ended, place);
        if (!layout.dialect().backslash() && first.backslashed * 2 > first.check.odd.count()) {
            Counted second = count(source, layout.withBackslash(), ended, place);
            return second.check.odd.count() < first.check.odd.count() ? second.check : first.check;
        }
        return first.check;
    }

    private record Counted(TextCheck check, long backslashed) {}

    private static Counted count(TextSource source, TextLayout layout, boolean ended, Place place) throws IOException {
        boolean plain = layout.linesBefore() == 0
                && layout.dialect().delimiter() != Dialect.NONE
                && !layout.dialect().backslash();
        OddPlaces odd = new OddPlaces(place);
        LastRecord last = new LastRecord();
        long backslashed = 0;
        try (Reader text = source.open()) {
            QuotedRecords records = layout.quotedRecords(text);
            for (List<String> fields = records.next(); fields != null; fields = records.next()) {
                plain &= records.plain();
                if (!ended) {
                    last.take(records.line(), fields);
                }
                if (records.damaged()) {
                    backslashed += records.backslashed() ? 1 : 0;
                    odd.addStrayQuote(records.line(), records.text());
                }
            }
        }
        if (!ended && last.isCutOff()) {
            odd.addCutOff(last.line(), last.text());
        }
        return new Counted(new TextCheck(layout, plain, odd), backslashed);
    }
}
