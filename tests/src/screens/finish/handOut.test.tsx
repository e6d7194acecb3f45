import { render } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import type { PlanAnswers } from '../../../../shared/records/forms/bowl';
import type { Settings } from '../../../../shared/records/settings';
import { HandOut } from '../../../../src/screens/finish/HandOut';
import { playUntil, settings } from '../playStory';

const plan: PlanAnswers = {
  settingC: 150,
  passes: 1,
  restH: 48,
  back: 'weeks6',
  skinNow: 'calm',
  toolsNow: 'offCooling',
  cardNow: 'printed',
  lateItching: 'saidItBack',
};
const lay = (change: Partial<Settings> = {}) => {
  const { consultation, atMs } = playUntil('FINISHED');
  return render(() => (
    <HandOut record={consultation.record} settings={{ ...settings, ...change }} plan={plan} atMs={atMs} />
  )).container;
};

afterEach(() => document.body.replaceChildren());

describe('her page to take home', () => {
  it('says whom to call, and has no line to write on then', () => {
    const page = lay();
    expect(page.textContent).toContain(`Late itching or rash: call ${settings.contact}; see a doctor.`);
    expect(page.querySelector('.hand-out-to-call')).toBeNull();
  });

  it('sends her to a doctor where the salon has set nobody, and keeps a line for a number by hand', () => {
    const page = lay({ contact: '' });
    expect(page.textContent).toContain('Late itching or rash: ask a doctor, or call the emergency number.');
    expect(page.querySelector('.hand-out-to-call')?.textContent).toBe('To call:');
  });

  it('says of which bottle its per cent are', () => {
    expect(lay().querySelector('.plan-done')?.textContent).toMatch(
      /lengths Sandbar powder, 3\s% bottle \(10\svol\), \d+\smin\./,
    );
  });

  it('says that her ends broke on a strand and had nothing on', () => {
    expect(lay().querySelector('[data-hair="ends"]')?.textContent).toContain(
      'ends: left out today, a strand broke.',
    );
  });
});
