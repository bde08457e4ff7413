package heeltap.record;

/** How acid targets are met. */
public enum AcidTargets {
    /** By common practice: so much for each 100 ml of base, the growth of the volume ignored. */
    RULE,
    /** Exactly in the finished liquid. */
    EXACT
}
