package heeltap.report;

import static org.assertj.core.api.Assertions.assertThat;

import heeltap.document.Document;
import java.time.Instant;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The machine's language and zone have no say in the bytes. */
class AnyMachineTest {
    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @AfterEach
    void putBack() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    @Test
    void sameBytesInTurkeyAndInKiribati() {
        Document document = SampleDocument.english();
        Instant stamp = ReportFiles.stampOf(document.month());
        byte[] pdf = PdfReport.write(document, stamp);
        byte[] workbook = WorkbookReport.write(document, stamp);
        Locale.setDefault(Locale.forLanguageTag("tr-TR"));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        assertThat(PdfReport.write(document, stamp)).isEqualTo(pdf);
        assertThat(WorkbookReport.write(document, stamp)).isEqualTo(workbook);
    }
}
