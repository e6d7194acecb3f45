import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { RawEvent } from '../../../shared/records/classify';
import { explainRefusal } from '../../../src/screens/explainRefusal';
import { type Played, playUntil, playUntilConfirmed, settings, tap } from './playStory';
import { showStation } from './stationOnTablet';

afterEach(cleanup);

const notNow = { kind: 'notNow' } as const;
const explain = ({ consultation, atMs }: Played, raw: RawEvent) =>
  explainRefusal(notNow, consultation, raw, settings, atMs);

describe('what the chart does not let through now', () => {
  it('is said to be damp hair where the hair is damp', () => {
    const feel = endsIronedWet.steps.find(({ raw }) => raw.type === 'ANSWERED' && raw.step === 'feelHair');
    const damp = tap(playUntilConfirmed('hotTools'), 1000, {
      type: 'ANSWERED',
      step: 'feelHair',
      answers: { ...feel?.raw.answers, ends: 'damp' },
    });
    const confirm: RawEvent = { type: 'STEP_CONFIRMED', answers: { step: 'feelHair' } };
    expect(explain(damp, confirm)).toEqual({ kind: 'dampHair' });
    expect(explain(playUntilConfirmed('hotTools'), confirm)).toEqual(notNow);
  });

  it('is said to be the stop, the parking or the end that holds her', () => {
    const parked = tap(playUntilConfirmed('client'), 1000, {
      type: 'PARKED',
      answers: { untilAtMs: endsIronedWet.startAtMs + 1e9 },
    });
    const back: RawEvent = { type: 'REOPENED', answers: { step: 'client' } };
    expect(explain(parked, back)).toEqual({ kind: 'permit', permit: { code: 'parked' } });
    expect(explain(playUntil('whole'), back)).toEqual({ kind: 'permit', permit: { code: 'closed' } });
  });

  it('is said to be a mix in which a strand broke, on the very screen', async () => {
    const shown = await showStation({ settings: salon });
    const upTo = endsIronedWet.steps.findIndex(({ raw }) => raw.type === 'DECIDED');
    const back: RawEvent = { type: 'REOPENED', answers: { step: 'strandTest' } };
    await shown.play([...endsIronedWet.steps.slice(0, upTo), { afterMs: 1000, by: 'Opal', raw: back }]);
    await shown.tap('[data-chair="3"]');
    await shown.tap('[data-act=who-Opal]');
    await shown.tap('[data-act=test-ends]');
    // The closed mix does not stand there again: somebody chooses it all the same.
    await shown.answer(['place', 'crown'], ['buildUp', 'none'], ['line', 'Sandbar powder']);
    await shown.answer(['developerPercent', '6'], ['minutes', '25'], ['makersLimitMin', '50']);
    await shown.tap('[data-act=start-strand]');
    expect(shown.find('.refusal').textContent).toContain(
      'A strand gummed or broke in this mix or a gentler one.',
    );
  });
});
