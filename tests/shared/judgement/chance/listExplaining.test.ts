import { describe, expect, it } from 'vitest';
import {
  hasNotKnown,
  isMetalPossible,
  listExplaining,
} from '../../../../shared/judgement/chance/listExplaining';
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

describe('what stands beside it', () => {
  const isMetal = (answers: Answers) => isMetalPossible(answers, listExplaining(answers, 'ends'));
  const isOpen = (answers: Answers) => hasNotKnown(listExplaining(answers, 'ends'), answers, 'ends');

  it('is metal where nothing explains it, or where something told may have left it, and not twice', () => {
    expect(isMetal(told({}))).toBe(true);
    expect(isMetal(told({ habits: [ironTold] }))).toBe(false);
    for (const history of ['boxColour', 'henna', 'poolWater', 'wellWater'])
      expect(isMetal(told({ habits: [ironTold], history: [history] })), history).toBe(true);
    for (const history of ['salonColour', 'gloss', 'keratin', 'lightener'])
      expect(isMetal(told({ habits: [ironTold], history: [history], bleaches: 2 })), history).toBe(false);
    for (const history of ['unknownBoxColour', 'compoundHenna', 'metallicColour', 'unknown']) {
      const answers = told({ habits: [ironTold], history: [history] });
      expect(listExplaining(answers, 'ends'), history).toContain('strangeColour');
      expect(isMetal(answers), history).toBe(false);
    }
  });

  it('is that something is not known only where what explains it was not known', () => {
    expect(isOpen(told({ habits: [ironTold] }))).toBe(false);
    expect(isOpen(told({}, { curl: 'lostAtEnds' }))).toBe(false);
    expect(isOpen(told({ habits: [{ ...ironTold, wetness: 'unknown' }] }))).toBe(true);
    expect(isOpen(told({}, { curl: 'unknown' }))).toBe(true);
    const dry = { ...ironTold, wetness: 'dry', daysAWeek: 7, forMonths: 48 };
    expect(isOpen(told({ habits: [dry] }))).toBe(false);
    expect(isOpen(told({ habits: [{ ...dry, secondsASection: 'unknown' }] }))).toBe(true);
  });
});
