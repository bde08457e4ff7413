package heeltap.record;

import heeltap.source.Place;

/**
 * A row of the sheet Accounts.
 *
 * @param account the program's own name of the account, such as {@code Stock}
 * @param name what the bar's ledger calls it
 */
public record AccountName(String account, String name, Place place) {}
