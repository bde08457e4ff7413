package heeltap.quantity;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads what suppliers print for a pack: {@code 6 x 70cl}, {@code 24/12oz}, {@code case of 40}, {@code 1/2 bbl keg}. */
public final class Packs {
    private Packs() {}

    /**
     * A pack text understood, or the reason why not.
     *
     * @param pack null where it could not be understood
     * @param reason one sentence; empty where it was understood
     */
    public record Reading(@Nullable Pack pack, String reason) {}

    /**
     * What one pack holds; empty where the text does not say so beyond doubt. The content may be of another measure than
     * the ingredient's: converting is the caller's.
     *
     * @param text as printed
     * @param measure the ingredient's; decides whether {@code oz} is a weight ({@link Measure#G}) or a US fluid ounce
     */
    public static Optional<Pack> parse(String text, Measure measure) {
        return Optional.ofNullable(read(text, measure).pack());
    }

    /** As {@link #parse}, with the reason where there is no pack. */
    public static Reading read(String text, Measure measure) {
        if (text.isBlank()) {
            return new Reading(null, "There is no pack text.");
        }
        try {
            return new Reading(new PackText(text, measure).pack(), "");
        } catch (PackText.NotUnderstood problem) {
            return new Reading(null, problem.reason);
        }
    }
}
