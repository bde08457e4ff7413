package heeltap.mixture;

import java.util.List;

/** Mixes contents. */
public final class Mixtures {
    private Mixtures() {}

    /** The parts together; masses add exactly. */
    public static Contents mix(List<Contents> parts) {
        Contents sum = Contents.NOTHING;
        for (Contents part : parts) {
            sum = new Contents(
                    sum.massG() + part.massG(),
                    sum.volumeMl() + part.volumeMl(),
                    sum.ethanolG() + part.ethanolG(),
                    sum.sugarG() + part.sugarG(),
                    sum.citricG() + part.citricG(),
                    sum.malicG() + part.malicG(),
                    sum.tartaricG() + part.tartaricG(),
                    sum.otherAcidG() + part.otherAcidG(),
                    sum.saltG() + part.saltG(),
                    true);
        }
        return sum;
    }
}
