package heeltap.record;

/** Which published means stand for a group's price elasticity where the bar sets none. */
public enum PublishedElasticity {
    /** Means of the elasticities that studies reported: Wagenaar, Salois and Komro 2009. */
    REPORTED,
    /** Means corrected for outliers and publication bias: Nelson 2013. */
    CORRECTED
}
