import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { clientAnswers, startClient } from './stationOnTablet';

afterEach(cleanup);

const button = '[data-act=started-by-mistake]';
const panel = 'dialog [data-panel=mistake]';

describe('a client who was started by mistake', () => {
  it('is called off from the first step in sight, and her chair is free again', async () => {
    const shown = await startClient();
    await shown.answer(['service', 'gloss']);
    await shown.tap(button);
    await shown.hold(`${panel} [data-act=close-mistake]`);
    expect(shown.find('[data-ended]').textContent).toBe('Q.F.: called off. The record is kept.');
    expect(shown.station.readState().closed).toMatchObject([{ how: 'calledOff' }]);
    expect(shown.look('[data-act=start-here][data-chair="3"]')).not.toBeNull();
  });

  it('is not called off by one tap', async () => {
    const shown = await startClient();
    await shown.tap(button);
    await shown.tap(`${panel} [data-act=close-mistake]`);
    expect(shown.station.readState().closed).toEqual([]);
  });

  it('is called off in the same way from the next steps, out of what is more for her', async () => {
    const shown = await startClient();
    await shown.answer(...clientAnswers);
    await shown.tap('[data-act=next]');
    await shown.tap('[data-act=more-for-client]');
    await shown.tap('[data-act=way-mistake]');
    await shown.hold(`${panel} [data-act=close-mistake]`);
    expect(shown.station.readState().closed).toMatchObject([{ how: 'calledOff' }]);
  });

  it('leaves a skin test that was put on in its own record', async () => {
    const shown = await startClient();
    await shown.tap('[data-act=skin-test]');
    await shown.answer(['method', 'makersMethod'], ['site', 'forearm']);
    await shown.tap('[data-act=skin-test-keep]');
    await shown.tap(button);
    await shown.hold(`${panel} [data-act=close-mistake]`);
    expect(shown.station.readState().closed).toMatchObject([{ how: 'calledOff' }]);
    expect(shown.station.readState().skinTests).toMatchObject([{ ticket: 'Q.F.', takenBack: null }]);
  });

  it('is no mistake once she is stopped', async () => {
    const shown = await startClient();
    await shown.hold('[data-question=reactions] [data-option=hives]');
    await shown.tap('[data-act=more-for-client]');
    expect(shown.look('[data-act=way-mistake]')).toBeNull();
    expect(shown.look(panel)).toBeNull();
  });
});
