import { salon } from '../../../../seeds/salon';
import { openSchool } from '../../../../src/demo/lessons';
import { type PracticeInUse, settlePractice } from '../../../../src/station/practice/createPractice';
import { makeTablet, type Tablet } from '../../storage/tablet';
import { type Shown, showStation } from '../stationOnTablet';

/** Practice as it is entered and left here: what was asked of it. */
export function makePractice(isOn: boolean, succeeds = true) {
  const done: string[] = [];
  const school = openSchool();
  const practice: PracticeInUse = {
    isOn,
    school: () => (isOn ? school : null),
    enter: async (by) => {
      done.push(`enter ${by}`);
      return succeeds;
    },
    leave: async () => {
      done.push('leave');
      return succeeds;
    },
  };
  return { practice, done };
}

/** A station in practice, with Opal's name known from the salon. */
export async function showPractice(tablet: Tablet = makeTablet()): Promise<Shown & { done: string[] }> {
  const { practice, done } = makePractice(true);
  const shown = await showStation({ tablet, practice, settings: settlePractice(salon) });
  return { ...shown, done };
}

/** The same, with a lesson begun by Opal. */
export async function beginLesson(
  id: string,
  how: 'hints' | 'exam' = 'hints',
  tablet?: Tablet,
): Promise<Shown & { done: string[] }> {
  const shown = await showPractice(tablet);
  await shown.tap(`[data-act=lesson-${id}]`);
  await shown.tap(`[data-act=begin-${how}]`);
  if (shown.look('[data-act=who-Opal]') !== null) await shown.tap('[data-act=who-Opal]');
  return shown;
}
