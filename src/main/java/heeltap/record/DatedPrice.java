package heeltap.record;

import heeltap.quantity.Money;
import heeltap.source.Place;
import java.time.LocalDate;

/**
 * A row of the sheet Prices: from that day on, the drink's price as the guest reads it.
 */
public record DatedPrice(String drink, LocalDate from, Money price, Place place) {}
