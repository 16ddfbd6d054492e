package org.hosewright.ledger.person;

/** A person together with what is kept of the password, for the door alone.
 *
 * @param person as it stands
 * @param secret to hold a typed password against
 */
public record Known(Person person, Secret secret) {}
