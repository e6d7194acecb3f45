import type { Page } from 'playwright-core';

/**
 * What of this screen is beyond its edges? One line each: anything that can be scrolled sideways, and a primary
 * action that is not wholly inside the viewport. What is hidden is not looked at.
 */
export const findOverflow = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const { clientWidth: width, clientHeight: height } = document.documentElement;
    const name = (element: Element) =>
      `${element.tagName.toLowerCase()}.${element.className} ${(element as HTMLElement).dataset.act ?? ''}`.trim();
    const title = document.querySelector('h1')?.textContent ?? '';
    const said: string[] = [];
    for (const element of document.querySelectorAll('html, body, body *')) {
      const { overflowX } = getComputedStyle(element);
      const mayScroll = element === document.documentElement || ['auto', 'scroll'].includes(overflowX);
      if (mayScroll && element.scrollWidth > element.clientWidth + 1) {
        said.push(
          `${title}: ${name(element)} scrolls sideways by ${element.scrollWidth - element.clientWidth}`,
        );
      }
    }
    const open = document.querySelector('dialog[open]') ?? document.querySelector('main');
    for (const action of open?.querySelectorAll('.big-button[data-kind="primary"]') ?? []) {
      const box = action.getBoundingClientRect();
      const isInside =
        box.left >= 0 && box.top >= 0 && box.right <= width + 0.5 && box.bottom <= height + 0.5;
      if (!isInside)
        said.push(
          `${title}: ${name(action)} is outside at ${Math.round(box.right)}, ${Math.round(box.bottom)}`,
        );
    }
    return said.map((line) => `${width} × ${height} · ${line}`);
  });
