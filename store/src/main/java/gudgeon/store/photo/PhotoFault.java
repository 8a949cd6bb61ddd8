package gudgeon.store.photo;

/** A photo that can't be used; the message is a sentence for the person: what, and what to do. */
final class PhotoFault extends Exception {
    PhotoFault(String sentence) {
        super(sentence);
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
