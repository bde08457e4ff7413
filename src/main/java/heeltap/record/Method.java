package heeltap.record;

/** How a drink is mixed; decides the usual water from ice. */
public enum Method {
    SHAKEN,
    STIRRED,
    BUILT,
    BLENDED,
    THROWN,
    NONE
}
