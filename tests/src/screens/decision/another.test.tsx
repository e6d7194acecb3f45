import { expect, it } from 'vitest';
import { beginConsultation } from '../../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import type { RawEvent } from '../../../../shared/records/classify';
import { DecisionScreen } from '../../../../src/screens/decision/DecisionScreen';
import { Preparing } from '../../../../src/screens/strandTest/Preparing';
import { layOnBench, press, seen } from '../bench';
import { type Played, tap } from '../playStory';

/** The lengths alone, of hair with two signs, and their strand from another place than the map's, recorded. */
const playOneStrand = (): Played => {
  const last = endsIronedWet.steps.findIndex(
    ({ raw }) => raw.type === 'OUTCOME_RECORDED' && raw.answers?.zone === 'lengths',
  );
  const change = (raw: RawEvent): RawEvent => {
    if (raw.type === 'ANSWERED' && raw.step === 'client')
      return { ...raw, answers: { ...raw.answers, reach: 'endsOut' } };
    if (raw.type === 'ANSWERED' && raw.step === 'feelHair')
      return { ...raw, answers: { ...raw.answers, breakage: 'some' } };
    if (raw.type === 'STRAND_STARTED') return { ...raw, answers: { ...raw.answers, place: 'crown' } };
    return raw;
  };
  return endsIronedWet.steps
    .slice(0, last + 1)
    .reduce<Played>(
      (played, { afterMs, by, raw }) =>
        raw.answers?.zone === 'ends'
          ? { consultation: played.consultation, atMs: played.atMs + afterMs }
          : tap(played, afterMs, change(raw), by),
      { consultation: beginConsultation('one strand'), atMs: endsIronedWet.startAtMs },
    );
};

it('names the place of one more strand on the decision and at the strand test', async () => {
  const bench = layOnBench(DecisionScreen, playOneStrand());
  const place = 'One more strand of the lengths, from where she irons: not tested yet.';
  expect(seen('[data-option="testAgain"]')).toContain(place);
  await press('decide-testAgain');
  expect(bench.way()).toContain('strandTest');
  bench.show(Preparing);
  expect(seen('[data-line="another"]')).toBe(place);
});
