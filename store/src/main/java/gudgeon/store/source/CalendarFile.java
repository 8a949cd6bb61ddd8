package gudgeon.store.source;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.property.DateEnd;
import biweekly.property.DateStart;
import biweekly.util.DateTimeComponents;
import biweekly.util.ICalDate;
import gudgeon.rebuild.schedule.Expected;
import gudgeon.rebuild.schedule.Schedule;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Date;

/** Arrivals and hold points as a calendar (RFC 5545), each on its likely day, all day long and without a bell. */
public final class CalendarFile {
    private CalendarFile() {}

    /**
     * The text.
     *
     * @param build the build's id: an event keeps its name from one file to the next, so that a calendar moves it and makes no second
     * @param made when it is made
     */
    public static String text(Schedule schedule, String build, Instant made) {
        ICalendar calendar = new ICalendar();
        calendar.setProductId("-//Gudgeon//Schedule//EN");
        schedule.arrivals()
                .forEach(one -> calendar.addEvent(event(one, "arrival", "To arrive: " + one.what(), build, made)));
        schedule.holdPoints()
                .forEach(one -> calendar.addEvent(event(one, "hold-point", "Hold point: " + one.what(), build, made)));
        return Biweekly.write(calendar).go();
    }

    private static VEvent event(Expected expected, String kind, String summary, String build, Instant made) {
        VEvent event = new VEvent();
        event.setUid(kind + "-" + expected.id() + "-" + build + "@gudgeon");
        event.setDateTimeStamp(Date.from(made));
        event.setDateStart(new DateStart(day(expected.day().half())));
        event.setDateEnd(new DateEnd(day(expected.day().half().plusDays(1))));
        event.setSummary(summary);
        event.setDescription("As likely as not by " + expected.day().words() + ".");
        event.setTransparency(true);
        return event;
    }

    private static ICalDate day(LocalDate day) {
        return new ICalDate(new DateTimeComponents(day.getYear(), day.getMonthValue(), day.getDayOfMonth()), false);
    }
}
