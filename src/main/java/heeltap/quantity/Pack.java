package heeltap.quantity;

/**
 * What one pack on an invoice holds: {@code 6 x 70cl} is 6 units of 700 ml.
 *
 * @param units how many bottles, cans or pieces of {@code unitSize} the pack holds, nested packs multiplied out
 * @param unitSize what one of them holds
 * @param form the word for the pack or its unit as written, lower case (bottle, case, keg, bag …); empty where none
 * @param text as written
 */
public record Pack(Exact units, Amount unitSize, String form, String text) {
    public Amount total() {
        return unitSize.times(units);
    }
}
