// Renders every screen in every size and theme into PNGs and one contact sheet, and checks the sizes that matter.
// Run: npx tsx tests/app/pictures.ts [folder] [state,state...] [size,size...]

import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openGallery, SIZES, stateNames, THEMES } from './gallery.ts';

const folder = process.argv[2] || join(tmpdir(), 'stovehand-pictures');
const wanted = process.argv[3] ? process.argv[3].split(',') : stateNames;
const sizes = Object.entries(SIZES).filter(
  ([name]) => !process.argv[4] || process.argv[4].split(',').includes(name),
);

async function main(): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const gallery = await openGallery();
  const made: string[] = [];
  try {
    for (const [size, box] of sizes) {
      await gallery.page.setViewportSize(box);
      for (const theme of THEMES) {
        for (const state of wanted) {
          await gallery.show(state, { theme });
          const file = `${size}-${theme}-${state}.png`;
          await gallery.page.screenshot({
            path: join(folder, file),
            fullPage: state.startsWith('plan') || state === 'sights',
          });
          made.push(file);
        }
      }
      const files = made.filter((file) => file.startsWith(size));
      await contactSheet(gallery, `contact-${size}`, files, box.width);
    }
  } finally {
    await gallery.close();
  }
  console.log(`${made.length} pictures in ${folder}`);
}

async function contactSheet(
  gallery: Awaited<ReturnType<typeof openGallery>>,
  name: string,
  files: string[],
  width: number,
): Promise<void> {
  const across = width > 1000 ? 4 : width > 800 ? 5 : 8;
  const html = `<body style="margin:0;background:#888;font:14px sans-serif;display:grid;grid-template-columns:repeat(${across},1fr);gap:8px;padding:8px">${files
    .map(
      (file) =>
        `<figure style="margin:0"><img src="${file}" style="width:100%"><figcaption>${file}</figcaption></figure>`,
    )
    .join('')}</body>`;
  const path = join(folder, `${name}.html`);
  writeFileSync(path, html);
  const sheet = await gallery.browser.newPage({ viewport: { width: 2000, height: 1200 } });
  await sheet.goto(`file://${path}`);
  await sheet.screenshot({ path: join(folder, `${name}.png`), fullPage: true });
  await sheet.close();
}

await main();
