import { expect, it } from 'vitest';
import { endsIronedWet } from '../../seeds/endsIronedWet';
import { stepsBefore } from './makeLog';
import { seat } from './seat';
import { useStation } from './station';

const station = useStation();

it('the tablet’s own Back closes what lies over the screen, then goes to the bar, and never leaves', async () => {
  const juno = await seat(station.browser, station.address, [stepsBefore(endsIronedWet.steps, 'LOOKED')]);
  const { page } = juno;
  /** Back, and what the station makes of it: another Back on its heels would go by an entry not yet laid again. */
  const goBack = () =>
    page.evaluate(
      () =>
        new Promise<void>((isDone) => {
          window.addEventListener('popstate', () => isDone(), { once: true });
          history.back();
        }),
    );
  const client = page.locator('main[data-consultation]');
  const isHere = () => new URL(page.url()).pathname === '/';

  await juno.open(1);
  await juno.act('more-for-client');
  await goBack();
  await page.locator('dialog:modal').waitFor({ state: 'detached' });
  expect(await client.count()).toBe(1);

  await goBack();
  await page.locator('.places').waitFor();
  await goBack();
  await goBack();
  expect(isHere()).toBe(true);

  await page.reload();
  await page.locator('.places').waitFor();
  await goBack();
  await juno.open(1);
  await goBack();
  await page.locator('.places').waitFor();
  expect(isHere()).toBe(true);
  await page.context().close();
});
