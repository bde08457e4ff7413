package heeltap.sheet;

/** A file that cannot be understood as a whole, with what would make it readable. */
final class UnreadableFile extends Exception {
    private final String reason;
    private final String remedy;

    UnreadableFile(String reason, String remedy) {
        super(reason);
        this.reason = reason;
        this.remedy = remedy;
    }

    String reason() {
        return reason;
    }

    String remedy() {
        return remedy;
    }
}
