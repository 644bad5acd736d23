// Every screen in phone, tablet and desktop on one sheet, to be looked at as a cook and as a designer: part of `npm run pictures`.

import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { among, everyKitchen } from './kitchens.ts';
import { everyLeaf } from './pages.ts';
import { DEVICES, type Hand, type Theme } from './sizes.ts';
import { openTheatre, type Stage } from './stage.ts';

const root = join(import.meta.dirname, '..', '..', '..');
const { values } = parseArgs({
  options: {
    folder: { type: 'string', default: join(root, 'dist') },
    out: { type: 'string', default: join(root, '.cache', 'contact-sheet') },
    every: { type: 'string', default: '1' },
    from: { type: 'string', default: '0' },
  },
});
const SHOWN = DEVICES.filter(({ name }) => ['phone', 'tablet', 'desktop'].includes(name));
/** Pixels across of one picture on the sheet. */
const THUMB = { phone: 190, tablet: 260, desktop: 400 } as Record<string, number>;

interface Shot {
  title: string;
  files: string[];
}

await mkdir(values.out, { recursive: true });
const theatre = await openTheatre(values.folder);
const stage = await theatre.stage();
const shots: Shot[] = [];
const all = everyKitchen();
const every = Math.max(1, Number(values.every) || 1);
const from = Math.max(0, Number(values.from) || 0);
for (const [i, kitchen] of all.filter((_, n) => n >= from && n % every === 0).entries()) {
  const shown = i % 4 === 3 ? among(kitchen, 6) : kitchen;
  await stage.open(shown);
  shots.push(
    await shoot(stage, `${i}`, shown.name, i % 2 ? 'dark' : 'bright', i % 5 === 4 ? 'left' : 'right'),
  );
}
for (const [i, leaf] of everyLeaf(all).entries()) {
  await leaf.open(stage);
  shots.push(await shoot(stage, `leaf-${i}`, leaf.name, i % 2 ? 'dark' : 'bright', 'right'));
}
const sheet = join(values.out, 'index.html');
await writeFile(sheet, html(shots));
await stage.page.setViewportSize({ width: 1800, height: 1200 });
await stage.page.goto(`file://${sheet}`);
await stage.page.screenshot({ path: join(values.out, 'contact-sheet.png'), fullPage: true });
await theatre.close();
console.log(`${shots.length} screens in ${SHOWN.length} sizes: ${sheet}`);

async function shoot(
  { page, turnTo }: Stage,
  id: string,
  title: string,
  theme: Theme,
  hand: Hand,
): Promise<Shot> {
  const files: string[] = [];
  for (const device of SHOWN) {
    await turnTo({ device, theme, text: 100, hand });
    const file = `${id}-${device.name}.png`;
    await page.screenshot({ path: join(values.out, file) });
    files.push(file);
  }
  return { title: `${title} · ${theme}${hand === 'left' ? ' · left hand' : ''}`, files };
}

function html(all: readonly Shot[]): string {
  const figures = all.map(({ title, files }) => {
    const pictures = files.map(
      (file, i) => `<img src="${file}" width="${THUMB[SHOWN[i]?.name ?? ''] ?? 200}" alt="">`,
    );
    return `<figure>${pictures.join('')}<figcaption>${title.replaceAll('<', '&lt;')}</figcaption></figure>`;
  });
  const style =
    'body{margin:12px;background:#777;font:14px sans-serif;display:grid;grid-template-columns:1fr 1fr;gap:16px}figure{margin:0;padding:8px;background:#eee}img{vertical-align:top;margin-right:6px}';
  return `<!doctype html><meta charset="utf-8"><title>Every screen</title><style>${style}</style>${figures.join('')}`;
}
