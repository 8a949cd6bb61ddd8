package gudgeon.store.source;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import gudgeon.rebuild.schedule.DateRange;
import gudgeon.rebuild.schedule.Expected;
import gudgeon.rebuild.schedule.Schedule;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The calendar is one by RFC 5545 and has every arrival and hold point. */
class CalendarFileTest {
    private static final DateRange DAY =
            new DateRange(LocalDate.of(2026, 4, 1), LocalDate.of(2026, 4, 9), LocalDate.of(2026, 4, 30));

    @Test
    void arrivalsAndHoldPointsAreDaysInIt() {
        Schedule schedule = new Schedule(
                DAY,
                List.of(),
                List.of(),
                List.of(),
                List.of(new Expected("piston", "the piston from Low Quay; Workshop", DAY)),
                List.of(new Expected("piston-seen", "Piston seen in place", DAY)),
                List.of(),
                "");
        String text = CalendarFile.text(schedule, "tarn", Instant.parse("2026-03-02T08:00:00Z"));
        assertThat(text)
                .startsWith("BEGIN:VCALENDAR\r\n")
                .contains("DTSTART;VALUE=DATE:20260409\r\n")
                .contains("DTEND;VALUE=DATE:20260410\r\n")
                .contains("UID:arrival-piston-tarn@gudgeon\r\n")
                .contains("SUMMARY:Hold point: Piston seen in place\r\n")
                .contains("SUMMARY:To arrive: the piston from Low Quay\\; Workshop\r\n");
        ICalendar read = Biweekly.parse(text).first();
        assertThat(read.getEvents()).hasSize(2);
        assertThat(read.validate(ICalVersion.V2_0).isEmpty()).isTrue();
    }
}
