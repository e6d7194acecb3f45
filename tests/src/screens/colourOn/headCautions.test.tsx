import { describe, expect, it } from 'vitest';
import { beginConsultation } from '../../../../machines/consultation/consultation';
import { firstVisit, secondVisit, strandsMeanwhile } from '../../../../seeds/fullHeadLightening';
import { ColourOn } from '../../../../src/screens/colourOn/ColourOn';
import { layOnBench, seen } from '../bench';
import { type Played, tap } from '../playStory';

const minute = 60_000;
const told = () => document.querySelector<HTMLElement>('.hand-caution')?.dataset.caution ?? null;
const steps = [...firstVisit.steps, ...strandsMeanwhile, ...secondVisit];
/** The next zone's bowl is weighed only once this one is on, or before, as in the seed. */
const play = (isEndsWeighed: boolean): Played =>
  steps
    .slice(0, steps.findIndex(({ raw }) => raw.type === 'BOWL_APPLIED') + 1)
    .filter(({ raw }) => isEndsWeighed || raw.type !== 'BOWL_WEIGHED' || raw.answers?.zone !== 'ends')
    .reduce<Played>((played, { afterMs, by, raw }) => tap(played, afterMs, raw, by), {
      consultation: beginConsultation('seed'),
      atMs: firstVisit.startAtMs,
    });

describe('what is heeded while something is on the head', () => {
  it.each([true, false])(
    'says the basin though another zone waits, its bowl weighed: %s',
    (isEndsWeighed) => {
      const played = play(isEndsWeighed);
      const clock = played.consultation.record.clocks.findLast(({ kind }) => kind === 'head');
      const lastsMs = (clock?.dueAtMs ?? 0) - (clock?.startedAtMs ?? 0);
      const bench = layOnBench(ColourOn, played);
      expect(told()).toBe(isEndsWeighed ? null : 'onHead');
      expect(seen('[data-zone="ends"]').includes('Never on lashes or brows')).toBe(isEndsWeighed);
      // Two minutes before: common practice, no source.
      bench.pass(lastsMs - 2 * minute - 1);
      expect(told()).toBe(isEndsWeighed ? null : 'onHead');
      bench.pass(1);
      expect(told()).toBe('basin');
    },
  );

  it('speaks of no rinse in time once the time is over', () => {
    const bench = layOnBench(ColourOn, play(false));
    bench.pass(120 * minute);
    expect(told()).toBe('overdue');
    expect(seen('.hand-caution')).not.toContain('in time');
  });
});
