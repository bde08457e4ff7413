package heeltap.mixture;

import heeltap.quantity.Exact;
import java.util.ArrayList;
import java.util.List;

/**
 * What cannot all dissolve in water at 20 °C. Each substance is judged by itself, over the water that is there; alcohol
 * dissolves less than water does, which is left out.
 */
public final class Solubility {
    private Solubility() {}

    /** A clause for each substance beyond its solubility, in a fixed order; none if all dissolves. */
    public static List<String> beyond(Contents contents) {
        double water = Math.max(0, contents.waterG());
        List<String> beyond = new ArrayList<>();
        judge(beyond, "sugar", contents.sugarG(), water, SucroseSolution.SATURATED);
        judge(beyond, "citric acid", contents.citricG(), water, AcidSolution.CITRIC_SATURATED);
        judge(beyond, "malic acid", contents.malicG(), water, AcidSolution.MALIC_SATURATED);
        judge(beyond, "tartaric acid", contents.tartaricG(), water, AcidSolution.TARTARIC_SATURATED);
        judge(beyond, "salt", contents.saltG(), water, SaltSolution.SATURATED);
        return List.copyOf(beyond);
    }

    private static void judge(List<String> beyond, String name, double grams, double water, double saturated) {
        double share = VolumeModel.share(grams, water);
        if (share > saturated) {
            beyond.add(percent(share) + " % " + name + " does not dissolve in its water: no more than "
                    + percent(saturated) + " % at 20 °C");
        }
    }

    private static String percent(double share) {
        return Exact.ofPhysical(100 * share).toSignificant(4).toPlainString();
    }
}
