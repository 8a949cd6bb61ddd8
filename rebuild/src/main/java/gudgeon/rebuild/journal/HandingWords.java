package gudgeon.rebuild.journal;

import static gudgeon.rebuild.journal.Naming.and;

/** What an entry about handing on says. */
record HandingWords() {
    String sentence(Handing fact) {
        Handing.LessonDecided decided = (Handing.LessonDecided) fact;
        return (decided.accepted() ? "Goes into the engine book: '" : "Stays out of the engine book: '")
                + decided.lesson() + "'." + and(decided.why());
    }
}
