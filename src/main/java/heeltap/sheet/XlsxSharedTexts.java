package heeltap.sheet;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** The texts that cells refer to by number; the runs of a rich text joined, without their phonetic guides. */
final class XlsxSharedTexts extends DefaultHandler {
    private final List<String> texts = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private boolean inText;
    private boolean inPhonetic;

    List<String> texts() {
        return texts;
    }

    @Override
    public void startElement(String uri, String local, String qualified, Attributes attributes) {
        switch (local) {
            case "si" -> text.setLength(0);
            case "t" -> inText = !inPhonetic;
            case "rPh" -> inPhonetic = true;
            default -> {}
        }
    }

    @Override
    public void endElement(String uri, String local, String qualified) {
        switch (local) {
            case "si" -> texts.add(EscapedText.decode(text.toString()));
            case "t" -> inText = false;
            case "rPh" -> inPhonetic = false;
            default -> {}
        }
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        if (inText) {
            text.append(characters, start, length);
        }
    }
}
