package heeltap.cli;

/** The program's entry. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.err.println("Heeltap is being built.");
        System.exit(2);
    }
}
