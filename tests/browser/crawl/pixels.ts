// Pictures of the page as numbers: decoded in a page of its own, since Node has no canvas.

import type { BrowserContext, Page } from 'playwright-core';

/** What runs in the darkroom: picture files in, numbers out. */
export class Darkroom {
  readonly #page: Page;

  private constructor(page: Page) {
    this.#page = page;
  }

  static async open(context: BrowserContext): Promise<Darkroom> {
    const page = await context.newPage();
    await page.goto('about:blank');
    await page.addInitScript('globalThis.__name = (f) => f');
    await page.evaluate('globalThis.__name = (f) => f');
    // A page behind another is given no touches and paints nothing.
    await context.pages()[0]?.bringToFront();
    return new Darkroom(page);
  }

  /**
   * The least contrast of each text: of its own colour against every pixel beside its letters, within two of them,
   * found by comparing a page whose letters are marked with one whose letters are clear. What lies under a letter is
   * not seen. Boxes and pictures in CSS pixels.
   */
  contrasts(
    marked: Buffer,
    cleared: Buffer,
    texts: { x: number; y: number; w: number; h: number; color: string }[],
  ): Promise<number[]> {
    return this.#page.evaluate(contrastsIn, {
      marked: marked.toString('base64'),
      cleared: cleared.toString('base64'),
      texts,
    });
  }

  /** The picture as a small grid of lightness, 0..255. */
  grid(picture: Buffer, across: number, down: number): Promise<number[]> {
    return this.#page.evaluate(gridOf, { picture: picture.toString('base64'), across, down });
  }

  /** How many pixels differ between two pictures. */
  differing(a: Buffer, b: Buffer): Promise<number> {
    return this.#page.evaluate(differingIn, { a: a.toString('base64'), b: b.toString('base64') });
  }
}

async function contrastsIn({
  marked,
  cleared,
  texts,
}: {
  marked: string;
  cleared: string;
  texts: { x: number; y: number; w: number; h: number; color: string }[];
}): Promise<number[]> {
  const read = async (base64: string) => {
    const bitmap = await createImageBitmap(await (await fetch(`data:image/png;base64,${base64}`)).blob());
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('No canvas.');
    pen.drawImage(bitmap, 0, 0);
    return pen.getImageData(0, 0, bitmap.width, bitmap.height);
  };
  const dot = new OffscreenCanvas(1, 1).getContext('2d', { willReadFrequently: true });
  if (!dot) throw new Error('No canvas.');
  const colourOf = (css: string) => {
    dot.fillStyle = css;
    dot.fillRect(0, 0, 1, 1);
    return [...dot.getImageData(0, 0, 1, 1).data];
  };
  // WCAG 2.2: relative luminance and contrast ratio.
  const linear = (c: number) => (c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4);
  const luminance = (r: number, g: number, b: number) =>
    0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
  const [a, b] = await Promise.all([read(marked), read(cleared)]);
  const NEAR = 2;
  return texts.map(({ x, y, w, h, color }) => {
    const [r = 0, g = 0, bl = 0] = colourOf(color);
    const ink = luminance(r, g, bl);
    const [left, top] = [Math.max(NEAR, Math.floor(x)), Math.max(NEAR, Math.floor(y))];
    const [right, bottom] = [
      Math.min(a.width - NEAR - 1, Math.ceil(x + w)),
      Math.min(a.height - NEAR - 1, Math.ceil(y + h)),
    ];
    const isLetter = (i: number) =>
      Math.abs((a.data[i] ?? 0) - (b.data[i] ?? 0)) +
        Math.abs((a.data[i + 1] ?? 0) - (b.data[i + 1] ?? 0)) +
        Math.abs((a.data[i + 2] ?? 0) - (b.data[i + 2] ?? 0)) >
      120;
    let least = Infinity;
    for (let py = top; py <= bottom; py++) {
      for (let px = left; px <= right; px++) {
        if (!isLetter((py * a.width + px) * 4)) continue;
        for (const [dx, dy] of [
          [NEAR, 0],
          [-NEAR, 0],
          [0, NEAR],
          [0, -NEAR],
        ] as const) {
          const i = ((py + dy) * a.width + px + dx) * 4;
          if (isLetter(i)) continue;
          const paper = luminance(b.data[i] ?? 0, b.data[i + 1] ?? 0, b.data[i + 2] ?? 0);
          least = Math.min(least, (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05));
        }
      }
    }
    return least;
  });
}

async function gridOf({
  picture,
  across,
  down,
}: {
  picture: string;
  across: number;
  down: number;
}): Promise<number[]> {
  const bitmap = await createImageBitmap(await (await fetch(`data:image/png;base64,${picture}`)).blob());
  const pen = new OffscreenCanvas(across, down).getContext('2d');
  if (!pen) throw new Error('No canvas.');
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(bitmap, 0, 0, across, down);
  const { data } = pen.getImageData(0, 0, across, down);
  return Array.from(
    { length: across * down },
    (_, i) => 0.2126 * (data[i * 4] ?? 0) + 0.7152 * (data[i * 4 + 1] ?? 0) + 0.0722 * (data[i * 4 + 2] ?? 0),
  );
}

async function differingIn({ a, b }: { a: string; b: string }): Promise<number> {
  const read = async (base64: string) => {
    const bitmap = await createImageBitmap(await (await fetch(`data:image/png;base64,${base64}`)).blob());
    const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
    if (!pen) throw new Error('No canvas.');
    pen.drawImage(bitmap, 0, 0);
    return pen.getImageData(0, 0, bitmap.width, bitmap.height).data;
  };
  const [one, two] = await Promise.all([read(a), read(b)]);
  let count = 0;
  for (let i = 0; i < one.length; i += 4) {
    const apart =
      Math.abs((one[i] ?? 0) - (two[i] ?? 0)) +
      Math.abs((one[i + 1] ?? 0) - (two[i + 1] ?? 0)) +
      Math.abs((one[i + 2] ?? 0) - (two[i + 2] ?? 0));
    if (apart > 60) count += 1;
  }
  return count;
}
