package heeltap.sheet;

import heeltap.source.Cell;
import heeltap.source.Place;
import heeltap.source.Row;
import heeltap.source.Sheet;
import heeltap.source.SheetFacts;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A text table, read again from its file each time. */
final class TextSheet implements Sheet {
    private final TextSource source;
    private final TextLayout layout;
    private final boolean plain;
    private final SheetFacts facts;

    private TextSheet(TextSource source, TextLayout layout, boolean plain, SheetFacts facts) {
        this.source = source;
        this.layout = layout;
        this.plain = plain;
        this.facts = facts;
    }

    static Sheet open(Path file, String name) throws IOException, UnreadableFile {
        TextEncoding encoding = TextEncoding.of(file);
        TextSurvey survey = TextSurvey.of(file, encoding);
        TextSource source = new TextSource(file, encoding, survey.dropped().count() > 0);
        Place place = Place.of(name);
        TextCheck check = TextCheck.of(source, TextLayout.of(survey.sample()), survey.ended(), place);
        OddPlaces odd = check.odd();
        odd.addSurvey(survey);
        SheetFacts facts =
                new SheetFacts(place, encoding.name(), check.layout().delimiterName(), false, odd.problems());
        return new TextSheet(source, check.layout(), check.plain(), facts);
    }

    @Override
    public SheetFacts facts() {
        return facts;
    }

    @Override
    public void read(RowReader reader) {
        try (Reader text = source.open()) {
            Records records = records(text);
            for (List<String> fields = records.next(); fields != null; fields = records.next()) {
                if (!reader.take(new Row(records.line(), cells(fields), layout.isSpaced() ? 0 : fields.size()))) {
                    return;
                }
            }
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private Records records(Reader text) throws IOException {
        if (plain) {
            return layout.plainRecords(text);
        }
        return layout.isSpaced() ? layout.spacedRecords(text) : layout.quotedRecords(text);
    }

    private static List<Cell> cells(List<String> fields) {
        List<Cell> cells = new ArrayList<>(fields.size());
        for (int i = 0; i < fields.size(); i++) {
            String field = fields.get(i);
            if (!Blank.is(field)) {
                cells.add(Cell.text(i, field));
            }
        }
        return cells;
    }
}
