package heeltap.record;

/** How the water that a drink takes from ice is reckoned, where the drink has no {@code Water percent} of its own. */
public enum IceWater {
    /** By a heat balance where it is known what the drink is made of, else the usual percent of its method. */
    HEAT_BALANCE,
    /** The usual percent of its method. */
    USUAL_PERCENT
}
