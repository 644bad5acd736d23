// Protocol buffers by hand, as much of them as the solver's questions and answers need: the package's own library
// writes code at run time, which this page's policy forbids.

const VARINT = 0;
const FIXED64 = 1;
const BYTES = 2;
const FIXED32 = 5;

/** A message under construction; fields are written in the order they are given. */
export class Writer {
  readonly #bytes: number[] = [];

  get bytes(): Uint8Array {
    return Uint8Array.from(this.#bytes);
  }

  whole(field: number, value: number): this {
    this.#varint((field << 3) | VARINT);
    this.#varint(value);
    return this;
  }

  real(field: number, value: number): this {
    this.#varint((field << 3) | FIXED64);
    this.#bytes.push(...new Uint8Array(new Float64Array([value]).buffer));
    return this;
  }

  /** A packed list of whole numbers. */
  wholes(field: number, values: readonly number[]): this {
    const packed = new Writer();
    for (const value of values) packed.#varint(value);
    return this.message(field, packed);
  }

  message(field: number, { bytes }: Writer): this {
    this.#varint((field << 3) | BYTES);
    this.#varint(bytes.length);
    for (const byte of bytes) this.#bytes.push(byte);
    return this;
  }

  /** Negative numbers go as 64 bits of two's complement. */
  #varint(value: number): void {
    if (!Number.isSafeInteger(value)) throw new RangeError(`${value} is no whole number.`);
    let left = BigInt.asUintN(64, BigInt(value));
    while (left > 0x7fn) {
      this.#bytes.push(Number(left & 0x7fn) | 0x80);
      left >>= 7n;
    }
    this.#bytes.push(Number(left));
  }
}

export type Field =
  | { field: number; kind: 'whole' | 'real'; value: number }
  | { field: number; kind: 'bytes'; value: Uint8Array };

/** The fields of a message, as they come. */
export function* fieldsOf(bytes: Uint8Array): Generator<Field> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let at = 0;
  while (at < bytes.length) {
    const [key, body] = varintAt(bytes, at);
    const [field, type] = [key >> 3, key & 7];
    if (type === VARINT) {
      const [value, next] = varintAt(bytes, body);
      yield { field, kind: 'whole', value };
      at = next;
    } else if (type === FIXED64) {
      yield { field, kind: 'real', value: view.getFloat64(body, true) };
      at = body + 8;
    } else if (type === BYTES) {
      const [length, begin] = varintAt(bytes, body);
      yield { field, kind: 'bytes', value: bytes.subarray(begin, begin + length) };
      at = begin + length;
    } else if (type === FIXED32) at = body + 4;
    else throw new Error(`A field of type ${type} cannot be read.`);
  }
}

/** The numbers of a packed list. */
export function wholesOf(packed: Uint8Array): number[] {
  const values: number[] = [];
  for (let at = 0; at < packed.length;) {
    const [value, next] = varintAt(packed, at);
    values.push(value);
    at = next;
  }
  return values;
}

function varintAt(bytes: Uint8Array, from: number): [value: number, next: number] {
  let value = 0n;
  let at = from;
  for (let shift = 0n; ; shift += 7n) {
    const byte = bytes[at++];
    if (byte === undefined) throw new Error('The message ends within a number.');
    value |= BigInt(byte & 0x7f) << shift;
    if (byte < 0x80) return [Number(BigInt.asIntN(64, value)), at];
  }
}
