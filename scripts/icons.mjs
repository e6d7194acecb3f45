// npm run icons
//
// Draws public/icon.svg as the PNG files that public/station.webmanifest names, and writes them beside it. They are
// kept with the source, because a build asks for no browser; run this again whenever the mark changes. What they have
// to be is checked by tests/browser/installable.test.ts.
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { chromiumFlags, readyChromium } from './chromium.mjs';

const folder = join(import.meta.dirname, '..', 'public');
const mark = await readFile(join(folder, 'icon.svg'), 'utf8');

/** The mark without round corners: a maskable icon is cut to a shape by the tablet, so its ground reaches the edges. */
const square = mark.replace(/ rx="\d+"/, '');
/** The mark's lines reach 89 % across its own square. At 70 % their farthest end lies within the circle that no shape cuts. */
const SHARE_OF_MASKABLE = 0.7;
const paper = /<rect [^>]*fill="(#[0-9A-Fa-f]{6})"/.exec(mark)?.[1];
if (paper === undefined) throw new Error('The mark names no ground');

/** @type {readonly { file: string, size: number, isMaskable: boolean }[]} */
const icons = [
  { file: 'icon-192.png', size: 192, isMaskable: false },
  { file: 'icon-512.png', size: 512, isMaskable: false },
  { file: 'icon-maskable-192.png', size: 192, isMaskable: true },
  { file: 'icon-maskable-512.png', size: 512, isMaskable: true },
];

const { executablePath, env } = await readyChromium();
const browser = await chromium.launch({ executablePath, env, args: chromiumFlags });
try {
  for (const { file, size, isMaskable } of icons) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    const share = isMaskable ? SHARE_OF_MASKABLE : 1;
    const drawn = (isMaskable ? square : mark).replace(
      '<svg ',
      `<svg style="display:block;width:${share * size}px;height:${share * size}px" `,
    );
    const ground = isMaskable ? paper : 'transparent';
    await page.setContent(
      `<body style="margin:0;width:${size}px;height:${size}px;display:grid;place-items:center;background:${ground}">${drawn}</body>`,
    );
    await writeFile(join(folder, file), await page.screenshot({ omitBackground: !isMaskable }));
    await page.close();
    console.log(join('public', file));
  }
} finally {
  await browser.close();
}
