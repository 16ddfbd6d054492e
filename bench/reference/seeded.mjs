/** A small seeded generator (mulberry32), so that the same number gives the same network on any machine. */
export class Seeded {
  #state;

  constructor(seed) {
    this.#state = seed >>> 0;
  }

  /** A number from 0 up to 1. */
  unit() {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let mixed = this.#state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }

  /** A whole number from 0 to below {@code end}. */
  below(end) {
    return Math.floor(this.unit() * end);
  }

  pick(choices) {
    return choices[this.below(choices.length)];
  }

  /** A number between two bounds with so many decimals that a case file stays short. */
  between(low, high, decimals = 0) {
    return Number((low + (high - low) * this.unit()).toFixed(decimals));
  }

  chance(share) {
    return this.unit() < share;
  }
}
