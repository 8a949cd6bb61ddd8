package gudgeon.bench.cli;

/** Input that can't be used; the message is one sentence or more for the person at the terminal. */
final class Unusable extends RuntimeException {
    Unusable(String sentences) {
        super(sentences);
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
