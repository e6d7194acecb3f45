import { describe, expect, it } from 'vitest';
import { findBarriers } from './accessibility';
import { tabletLandscape } from './browser';
import { useStation } from './station';

const station = useStation();

describe('the first screen', () => {
  it('shuts nobody out', async () => {
    const page = await station.browser.newPage(tabletLandscape);
    await page.goto(station.address);
    await page.locator('#station > *').first().waitFor();
    expect(await findBarriers(page)).toEqual([]);
  });

  it('and is seen to, when a picture has no words and a text is too pale', async () => {
    const page = await station.browser.newPage(tabletLandscape);
    await page.goto(station.address);
    await page.evaluate(() => {
      const picture = document.createElement('img');
      picture.src = '/icon.svg';
      const pale = document.createElement('p');
      pale.textContent = '12:47';
      pale.style.color = '#8a7a70';
      document.querySelector('#station')?.prepend(picture, pale);
    });
    const rules = (await findBarriers(page)).map((finding) => finding.split(':')[0]);
    expect(rules).toEqual(expect.arrayContaining(['image-alt', 'color-contrast-enhanced']));
  });
});
