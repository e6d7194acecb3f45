import { describe, expect, it } from 'vitest';
import { listExplaining } from '../../../../shared/judgement/chance/listExplaining';
import type { Answers } from '../../../../shared/records/forms/asked';
import { ironTold } from '../../hair/told';

const told = (hotTools: object, feelHair: object = {}): Answers =>
  ({
    client: { reach: 'fullHead', length: 'collarbone', service: 'lighten' },
    hotTools: { habits: [], smoke: 'no', history: ['none'], ...hotTools },
    feelHair: {
      porosity: 'normal',
      curl: 'sameAlong',
      wetStretch: 'springsBack',
      breakage: 'no',
      ...feelHair,
    },
  }) as unknown as Answers;

describe('what can explain a strand that broke', () => {
  it('is nothing where nothing was told that would', () => {
    expect(listExplaining(told({}), 'ends')).toEqual([]);
    expect(listExplaining({}, 'ends')).toEqual([]);
  });

  it('is wet ironing, without the figures of heat that only say it again', () =>
    expect(listExplaining(told({ habits: [ironTold] }), 'ends')).toEqual(['ironedWet']));

  it('is heat along the strand where the iron was dry', () => {
    const dry = told({ habits: [{ ...ironTold, wetness: 'dry', daysAWeek: 7, forMonths: 48 }] });
    expect(listExplaining(dry, 'ends')).toEqual(['helixLost']);
  });

  it('is told heaviest first, and what is not known can explain it too', () => {
    const answers = told({ history: ['lightener'], bleaches: 'unknown' }, { curl: 'lostAtEnds' });
    expect(listExplaining(answers, 'ends').slice(0, 2)).toEqual(['bleaches', 'curlLost']);
    expect(listExplaining(answers, 'ends')).toContain('helixLost');
  });
});
