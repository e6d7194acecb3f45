import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { tabletLandscape } from './browser';
import type { LooksRule } from './looks/finding';
import { inspect } from './looks/inspect';
import { walkKeys } from './looks/keys';
import { useStation } from './station';

const station = useStation();

/** A page that is as it should be: letters, actions, a footer. */
const good = `<!doctype html>
  <style>
    * { box-sizing: border-box; } body { margin: 0; background: #fbf7f1; color: #1f1813; font: 24px/1.3 sans-serif; }
    .page { height: 100vh; display: flex; flex-direction: column; }
    .step-content { flex: 1; min-height: 0; overflow-y: auto; padding: 20px 32px; }
    .step-actions { display: flex; justify-content: flex-end; gap: 16px; padding: 20px 32px; }
    button { min-width: 140px; min-height: 118px; font: inherit; color: inherit; background: #fff; border: 3px solid; }
    .small { min-width: 44px; min-height: 44px; }
    :focus-visible { outline: 5px solid #22333f; }
  </style>
  <div class="page">
    <main class="step-content"><h1>How does it feel?</h1><p id="words">Dry to the touch, from nape to ends</p>
      <button class="option" data-option="dry">Dry</button> <button class="small">More</button></main>
    <footer class="step-actions"><button>Back</button><button data-kind="primary">Next</button></footer>
  </div>`;

/** The same page with one thing done to it by `breach`, which runs in the page. */
async function plant(breach: (page: Document) => void): Promise<Page> {
  const page = await station.browser.newPage(tabletLandscape);
  await page.setContent(good);
  await page.evaluate(`(${String(breach)})(document)`);
  return page;
}

const breaches: readonly (readonly [string, LooksRule, RegExp, (page: Document) => void])[] = [
  [
    'content longer than its page',
    'scrolls',
    /main\.step-content.*· \d+/,
    (page) => {
      page
        .querySelector('main')
        ?.append(Object.assign(page.createElement('div'), { style: 'height: 900px' }));
    },
  ],
  [
    'something wider than its page',
    'scrollsSideways',
    /html.*120 px/,
    (page) => {
      page.body.append(
        Object.assign(page.createElement('div'), {
          style: 'position: absolute; top: 0; width: 1400px; height: 2px',
        }),
      );
    },
  ],
  [
    'a word cut by its box',
    'clipped',
    /#?.*Dry to the touch.*cut by p/,
    (page) => {
      const words = page.querySelector<HTMLElement>('#words');
      if (words !== null) words.style.cssText = 'width: 120px; overflow: hidden; white-space: nowrap';
    },
  ],
  [
    'letters cut off below by a box that is too low',
    'clipped',
    /Dry to the touch.*cut by p/,
    (page) => {
      const words = page.querySelector<HTMLElement>('#words');
      if (words !== null) words.style.cssText = 'height: 14px; overflow: hidden';
    },
  ],
  [
    'a word pushed out of the window',
    'clipped',
    /Dry to the touch.*cut by the window/,
    (page) => {
      page.documentElement.style.overflow = 'hidden';
      const words = page.querySelector<HTMLElement>('#words');
      if (words !== null) words.style.cssText = 'position: fixed; left: 1200px; white-space: nowrap';
    },
  ],
  [
    'a word that hangs out of its button',
    'clipped',
    /outside of its button/,
    (page) => {
      const more = page.querySelector<HTMLElement>('.small');
      if (more !== null)
        more.style.cssText = 'width: 44px; padding: 0; text-align: left; white-space: nowrap';
    },
  ],
  [
    'a button whose side is cut',
    'clipped',
    /More.*of it cut by p/,
    (page) => {
      const box = page.createElement('p');
      box.style.cssText = 'width: 100px; overflow: hidden';
      const more = page.querySelector<HTMLElement>('.small');
      more?.before(box);
      if (more !== null) more.style.width = '110px';
      box.append(more ?? '');
    },
  ],
  [
    'what was typed, longer than its field',
    'clipped',
    /not seen/,
    (page) => {
      const field = Object.assign(page.createElement('input'), { value: 'Wilhelmina Mommsenmm', size: 4 });
      field.style.cssText = 'min-height: 44px; width: 80px';
      page.querySelector('main')?.append(field);
    },
  ],
  [
    'a word torn in two',
    'torn',
    /touch|from|nape/,
    (page) => {
      const words = page.querySelector<HTMLElement>('#words');
      if (words !== null) words.style.cssText = 'width: 20px; overflow-wrap: anywhere';
    },
  ],
  [
    'two texts over each other',
    'overlap',
    /Dry to the touch/,
    (page) => {
      const words = page.querySelector<HTMLElement>('#words');
      if (words !== null) words.style.marginTop = '-70px';
    },
  ],
  [
    'two buttons over each other',
    'overlap',
    /Next/,
    (page) => {
      const next = page.querySelector<HTMLElement>('[data-kind="primary"]');
      if (next !== null) next.style.marginLeft = '-60px';
    },
  ],
  [
    'a button whose upper edge belongs to something that cannot be seen',
    'overlap',
    /Back.*a tap at its upper edge goes to div/,
    (page) => {
      const glass = page.createElement('div');
      glass.style.cssText = 'position: fixed; left: 0; right: 0; bottom: 120px; height: 60px';
      page.body.append(glass);
    },
  ],
  [
    'a button of 40 px',
    'target',
    /More.*40 px, at least 44/,
    (page) => {
      const more = page.querySelector<HTMLElement>('.small');
      if (more !== null) more.style.cssText = 'min-height: 0; height: 40px';
    },
  ],
  [
    'an action of 100 px',
    'target',
    /Back.*100 px, at least 118/,
    (page) => {
      const back = page.querySelector<HTMLElement>('.step-actions button');
      if (back !== null) back.style.cssText = 'min-height: 0; height: 100px';
    },
  ],
  [
    'an option of 117 px',
    'target',
    /dry.*117 px × 118 px, at least 118/,
    (page) => {
      const option = page.querySelector<HTMLElement>('.option');
      if (option !== null) option.style.cssText = 'min-width: 0; width: 117px';
    },
  ],
  [
    'a text of 6 : 1',
    'contrast',
    /Dry to the touch.*[56]\.\d\d : 1, at least 7/,
    (page) => {
      const words = page.querySelector<HTMLElement>('#words');
      if (words !== null) words.style.color = '#5f5f5f';
    },
  ],
  [
    'a text that is half faded',
    'contrast',
    /Dry to the touch/,
    (page) => {
      const words = page.querySelector<HTMLElement>('#words');
      if (words !== null) words.style.opacity = '0.5';
    },
  ],
  [
    'a text on a dark box that is laid under it',
    'contrast',
    /Dry to the touch/,
    (page) => {
      const words = page.querySelector<HTMLElement>('#words');
      const box = words?.getBoundingClientRect();
      const dark = page.createElement('div');
      dark.style.cssText = `position: fixed; background: #333; top: ${box?.top}px; left: 0; width: 900px; height: 60px`;
      words?.before(dark);
      if (words !== null) words.style.position = 'relative';
    },
  ],
  [
    'letters of a drawing on a shape of it',
    'contrast',
    /level/,
    (page) => {
      const drawing = page.createElement('div');
      drawing.innerHTML =
        '<svg width="200" height="40"><rect width="200" height="40" fill="#8a3610"/><text y="28" fill="#1f1813">level 6</text></svg>';
      page.querySelector('main')?.append(drawing);
    },
  ],
  [
    'a primary action that is not the last',
    'primary',
    /Next.*to its right/,
    (page) => {
      page.querySelector('.step-actions')?.append(page.querySelector('.step-actions button') ?? '');
    },
  ],
  [
    'a primary action in the middle',
    'primary',
    /Next.*ends at/,
    (page) => {
      const row = page.querySelector<HTMLElement>('.step-actions');
      if (row !== null) row.style.justifyContent = 'center';
    },
  ],
];

const breachesOfKeys: readonly (readonly [string, RegExp, (page: Document) => void])[] = [
  [
    'a control that no Tab reaches',
    /Back.*no Tab/,
    (page) => {
      const back = page.querySelector<HTMLElement>('.step-actions button');
      back?.addEventListener('focus', () => back.blur());
      back?.addEventListener('focusin', (event) => event.stopImmediatePropagation());
    },
  ],
  [
    'an order that is not that of reading',
    /Dry.*comes after|Next.*comes after|More.*comes after|Back.*comes after/,
    (page) => {
      const row = page.querySelector<HTMLElement>('.step-actions');
      if (row !== null) row.style.flexDirection = 'row-reverse';
    },
  ],
  [
    'a focus that cannot be seen',
    /More.*no mark/,
    (page) => {
      const more = page.querySelector<HTMLElement>('.small');
      if (more !== null) more.style.outline = 'none';
    },
  ],
  [
    'a focus under something',
    /More.*lies under/,
    (page) => {
      const lid = page.createElement('div');
      lid.style.cssText = 'position: fixed; inset: 0 0 200px 0; background: #fff';
      page.body.append(lid);
    },
  ],
];

describe('looking at a screen', () => {
  it('finds nothing on a page that is as it should be', async () => {
    const page = await plant(() => undefined);
    expect(await inspect(page)).toEqual([]);
    expect(await walkKeys(page)).toEqual([]);
    await page.close();
  });

  it.each(breaches)('finds %s', async (_what, rule, says, breach) => {
    const page = await plant(breach);
    const found = (await inspect(page)).filter((finding) => finding.rule === rule);
    expect(found.map(({ element, measured }) => `${element} · ${measured}`).join('\n')).toMatch(says);
    await page.close();
  });

  it.each(breachesOfKeys)('finds %s', async (_what, says, breach) => {
    const page = await plant(breach);
    const found = await walkKeys(page);
    expect(found.map(({ element, measured }) => `${element} · ${measured}`).join('\n')).toMatch(says);
    await page.close();
  });
});
