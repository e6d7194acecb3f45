import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import type { DemoInUse } from '../../../src/station/demo/createDemo';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

function makeDemo(isHere: boolean, succeeds = true) {
  const done: string[] = [];
  const demo: DemoInUse = {
    isHere,
    load: async () => {
      done.push('load');
      return succeeds;
    },
    remove: async () => {
      done.push('remove');
      return succeeds;
    },
  };
  return { demo, done };
}

describe('the invented salon', () => {
  it('is offered where nobody has done anything, beside what to do first', async () => {
    const { demo, done } = makeDemo(false);
    const shown = await showStation({ demo });
    expect(shown.find('.strip-quiet').textContent).toContain('Tap a chair when your next client sits down.');
    expect(shown.look('[data-demo]')).toBeNull();
    await shown.tap('[data-act=load-demo]');
    expect(done).toEqual(['load']);
    expect(shown.find('[data-act=load-demo]').textContent).toBe('Setting up the invented salon …');
  });

  it('says that it could not be set up, and can be tried again', async () => {
    const shown = await showStation({ demo: makeDemo(false, false).demo });
    await shown.tap('[data-act=load-demo]');
    expect(shown.find('.demo-offer [role=alert]').textContent).toContain('could not be set up');
    expect((shown.find('[data-act=load-demo]') as HTMLButtonElement).disabled).toBe(false);
  });

  it('is not offered any more once settings were saved or a client started', async () => {
    const saved = await showStation({ demo: makeDemo(false).demo, settings: salon });
    expect(saved.look('[data-act=load-demo]')).toBeNull();
  });

  it('is not offered in a window that only watches', async () => {
    const shown = await showStation({ demo: makeDemo(false).demo });
    shown.station.watch(shown.station.readLogs());
    await shown.settle();
    expect(shown.look('[data-act=load-demo]')).toBeNull();
  });

  it('is marked on every screen and in the title of the window, and is left by a hold', async () => {
    const { demo, done } = makeDemo(true);
    const shown = await showStation({ demo, settings: salon });
    expect(document.title).toBe('DEMO · Strandproof');
    await shown.tap('[data-act=day]');
    expect(shown.find('[data-demo]').textContent).toContain('Start no real client here.');
    await shown.tap('[data-act=leave-demo]');
    await shown.tap('[data-act=remove-demo]');
    expect(done).toEqual([]);
    await shown.tap('[data-act=remove-demo-confirm]');
    expect(done).toEqual(['remove']);
    shown.unmount();
    expect(document.title).toBe('Strandproof');
  });

  it('says that it could not be removed, and can be held again', async () => {
    const { demo, done } = makeDemo(true, false);
    const shown = await showStation({ demo, settings: salon });
    await shown.tap('[data-act=leave-demo]');
    await shown.hold('[data-act=remove-demo]');
    expect(shown.find('dialog [role=alert]').textContent).toContain('it is still here');
    await shown.hold('[data-act=remove-demo]');
    expect(done).toEqual(['remove', 'remove']);
  });
});
