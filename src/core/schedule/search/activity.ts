/**
 * Which variable was most in the way of late: a heap of variables by how often
 * they took part in dead ends, older ones counting less.
 */

const FADE = 0.95;

export class Activity {
  readonly of: Float64Array;
  private readonly heap: Int32Array;
  private readonly place: Int32Array;
  private size = 0;
  private step = 1;

  constructor(count: number) {
    this.of = new Float64Array(count);
    this.heap = new Int32Array(count);
    this.place = new Int32Array(count).fill(-1);
  }

  add(variable: number): void {
    if (this.place[variable]! >= 0) return;
    this.place[variable] = this.size;
    this.heap[this.size] = variable;
    this.rise(this.size++);
  }

  /** Takes out the most active one; -1 when none is left. */
  take(): number {
    if (this.size === 0) return -1;
    const top = this.heap[0]!;
    this.place[top] = -1;
    const last = this.heap[--this.size]!;
    if (this.size > 0) {
      this.heap[0] = last;
      this.place[last] = 0;
      this.sink(0);
    }
    return top;
  }

  involve(variable: number): void {
    this.of[variable]! += this.step;
    if (this.of[variable]! > 1e100) this.rescale();
    if (this.place[variable]! >= 0) this.rise(this.place[variable]!);
  }

  fade(): void {
    this.step /= FADE;
  }

  private rescale(): void {
    for (let i = 0; i < this.of.length; i++) this.of[i]! *= 1e-100;
    this.step *= 1e-100;
  }

  private rise(at: number): void {
    const variable = this.heap[at]!;
    const activity = this.of[variable]!;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      const above = this.heap[parent]!;
      if (this.of[above]! >= activity) break;
      this.put(above, at);
      at = parent;
    }
    this.put(variable, at);
  }

  private sink(at: number): void {
    const variable = this.heap[at]!;
    const activity = this.of[variable]!;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= this.size) break;
      if (child + 1 < this.size && this.of[this.heap[child + 1]!]! > this.of[this.heap[child]!]!) child++;
      if (this.of[this.heap[child]!]! <= activity) break;
      this.put(this.heap[child]!, at);
      at = child;
    }
    this.put(variable, at);
  }

  private put(variable: number, at: number): void {
    this.heap[at] = variable;
    this.place[variable] = at;
  }
}
