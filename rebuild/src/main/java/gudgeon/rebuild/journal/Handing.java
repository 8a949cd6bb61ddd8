package gudgeon.rebuild.journal;

/** What a finished build hands on. */
public sealed interface Handing extends Fact {
    /**
     * Whether something that this build taught goes into the engine book for the next one.
     *
     * @param lesson its id
     */
    record LessonDecided(String lesson, boolean accepted, String why) implements Handing {
        @Override
        public String about() {
            return lesson;
        }
    }
}
