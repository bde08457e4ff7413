package heeltap.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Spellings of dates and times. */
class DateTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "2026-10-03; 2026-10-03; 2026-10-03;",
                "2026/10/3; 2026-10-03; 2026-10-03;",
                "20261003; 2026-10-03; 2026-10-03;",
                "2026-10-03T21:14:05; 2026-10-03; 2026-10-03; 21:14:05",
                "2026-10-03T21:14:05.123+02:00; 2026-10-03; 2026-10-03; 21:14:05",
                "2026-10-03 21:14Z; 2026-10-03; 2026-10-03; 21:14",
                "03/10/2026; 2026-10-03; 2026-03-10;",
                "3.10.26; 2026-10-03; 2026-03-10;",
                "03-10-2026 9:14 PM; 2026-10-03; 2026-03-10; 21:14",
                "3. 10. 2026, 21.14 Uhr; 2026-10-03; 2026-03-10; 21:14",
                "3 Oct 2026; 2026-10-03; 2026-10-03;",
                "03-Oct-26; 2026-10-03; 2026-10-03;",
                "Oct 3, 2026 12:05 am; 2026-10-03; 2026-10-03; 00:05",
                "October 3rd, 2026; 2026-10-03; 2026-10-03;",
                "Sat, 3 October 2026; 2026-10-03; 2026-10-03;",
                "samedi 3 octobre 2026 à 21h14; 2026-10-03; 2026-10-03; 21:14",
                "1er août 2026; 2026-08-01; 2026-08-01;",
                "3. Oktober 2026 um 21:14 Uhr; 2026-10-03; 2026-10-03; 21:14",
                "3 de octubre de 2026 9:14 p. m.; 2026-10-03; 2026-10-03; 21:14",
                "3 ottobre 2026 ore 21.14; 2026-10-03; 2026-10-03; 21:14",
                "za 3 okt. 2026 om 21:14; 2026-10-03; 2026-10-03; 21:14",
                "3 de outubro de 2026 às 21:14; 2026-10-03; 2026-10-03; 21:14",
                "mar. 3 mars 2026; 2026-03-03; 2026-03-03;",
                "Mar 3 2026; 2026-03-03; 2026-03-03;",
                "sexta-feira, 2 de outubro de 2026; 2026-10-02; 2026-10-02;",
                "2026-Oct-03; 2026-10-03; 2026-10-03;",
                "31/12/2026; 2026-12-31; -;",
                "12/31/2026; -; 2026-12-31;",
                "30/02/2026; -; -;",
                "2026-13-01; -; -;",
                "12.50; -; -;",
                "1/2; -; -;",
                "Negroni; -; -;",
                "3 Negroni 2026; -; -;",
                "2026-10-03 noon; -; -;",
                "2026-10-03 25:00; -; -;",
                "192.168.10.26; -; -;"
            })
    void isReadInBothOrders(String text, String dayMonth, String monthDay, String time) {
        DateText date = DateText.parse(text);

        assertThat(date == null ? "-" : date.date(DateOrder.DAY_MONTH) + "")
                .isEqualTo(dayMonth.equals("-") && date != null ? "null" : dayMonth);
        assertThat(date == null ? "-" : date.date(DateOrder.MONTH_DAY) + "")
                .isEqualTo(monthDay.equals("-") && date != null ? "null" : monthDay);
        assertThat(date == null ? null : date.time()).isEqualTo(time == null ? null : LocalTime.parse(time));
    }
}
