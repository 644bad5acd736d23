/** A list of atoms that is filled and emptied over and over, without asking for memory each time. */
export class AtomList {
  /** Signed variable, value, signed variable, value... */
  items = new Int32Array(128);
  /** Two for each atom. */
  length = 0;

  add(signed: number, value: number): void {
    if (this.length === this.items.length) {
      const wide = new Int32Array(2 * this.length);
      wide.set(this.items);
      this.items = wide;
    }
    this.items[this.length++] = signed;
    this.items[this.length++] = value;
  }

  clear(): void {
    this.length = 0;
  }

  /** Drops an atom, the last taking its place. */
  drop(at: number): void {
    this.length -= 2;
    this.items[at] = this.items[this.length]!;
    this.items[at + 1] = this.items[this.length + 1]!;
  }
}
