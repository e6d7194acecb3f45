import type { StoryStep } from '../../seeds/story';
import type { RawEvent } from '../../shared/records/classify';
import { mixQuestions } from '../../shared/records/forms/test';
import type { Raw, RawForm } from '../../shared/records/readForm';
import type { Settings } from '../../shared/records/settings';
import { ASSUMED_HOLD_MS } from '../../src/parts/hold';
import type { Person } from './person';
import { answer, fill } from './typing';

const sayZone = (answers: RawForm): string => String(answers.zone);

/** Brings the clock of this zone to the front, where it is not. */
async function showClock({ page, act }: Person, zone: string): Promise<void> {
  if ((await page.locator(`[data-act="show-${zone}"]`).count()) > 0) await act(`show-${zone}`);
}

/** Looks at the screen, just before it is left. */
export type Look = () => Promise<void>;

const lookAway: Look = () => Promise.resolve();

/** Which taps say this, on the screen where it can be said? */
async function doIt(person: Person, raw: RawEvent, look: Look, by: string): Promise<void> {
  const { act, hold, page } = person;
  const kept = async (what: () => Promise<void>) => {
    await look();
    await person.kept(what);
  };
  const answers: RawForm = raw.answers ?? {};
  const { zone: _zone, ...rest } = answers;
  switch (raw.type) {
    case 'OPENED':
      await act('start');
      await fill(person, answers);
      await look();
      await act('open');
      return page.locator('main[data-consultation]').waitFor();
    case 'ANSWERED':
      return answerStep(person, answers);
    case 'STEP_CONFIRMED':
      return kept(() => act('next'));
    case 'SKIN_TEST_NOTED':
      await act('skin-test');
      await act('skin-test-earlier');
      await fill(person, answers);
      return kept(() => act('skin-test-keep'));
    case 'STRAND_STARTED': {
      const isFirst = (await page.locator('[data-act="another-strand"]').count()) === 0;
      await act(isFirst ? `test-${sayZone(answers)}` : 'another-strand');
      const isSame = (await page.locator('[data-panel="same-mix"]').count()) > 0;
      await fill(
        person,
        { buildUp: 'washedOff', ...rest },
        isSame ? [...Object.keys(mixQuestions), 'makersLimitMin'] : [],
      );
      return kept(() => act('start-strand'));
    }
    case 'LOOKED': {
      const { of, stinging, hair, ...seen } = rest;
      await showClock(person, sayZone(answers));
      await act('look');
      if (of === 'head') {
        return kept(() => act(stinging === 'yes' ? 'stinging-yes' : `hair-${String(hair)}`));
      }
      const level = page.locator(`[data-question="level"] [data-option="${String(seen.level)}"]`);
      await page.locator('[data-question="level"]').waitFor();
      if ((await level.count()) === 0) await act('other-level');
      await person.press(level);
      // As the level says it stands already: nobody taps it.
      if (seen.undertone !== undefined && seen.undertone !== 'asExpected')
        await person.press(
          page.locator(`[data-question="undertone"] [data-option="${String(seen.undertone)}"]`),
        );
      return kept(() =>
        person.press(page.locator(`[data-question="feel"] [data-option="${String(seen.feel)}"]`)),
      );
    }
    case 'STRAND_BROKE':
      await showClock(person, sayZone(answers));
      return kept(() =>
        hold(page.locator(`[data-act="strand-broke"][data-option="${String(answers.zone)}"]`)),
      );
    case 'STRAND_TAKEN_OFF':
      await showClock(person, sayZone(answers));
      if (rest.why === 'timeIsUp') return kept(() => act('take-off'));
      await act('take-off');
      return kept(() =>
        person.press(page.locator(`[data-question="why"] [data-option="${String(rest.why)}"]`)),
      );
    case 'OUTCOME_RECORDED':
      // Of hair that broke nothing else is asked, and of a strand that broke in the mix nothing at all.
      if ((await page.locator('[data-broke]').count()) > 0) return kept(() => act('record-outcome'));
      if (rest.fibre === 'broken') await fill(person, { fibre: rest.fibre });
      else
        await fill(person, {
          fibre: rest.fibre,
          wentPast30: 'no',
          evenness: 'even',
          ...rest,
        });
      return kept(() => act('record-outcome'));
    case 'OVERRIDDEN':
      await act('show-freer');
      await person.press(page.locator('[data-question="decision"] [data-option="gentler"]'));
      await act('override-freer');
      await fill(person, { by, ...rest }, ['rule']);
      return kept(() => act('override'));
    case 'DECIDED': {
      const offered = page.locator(`[data-question="decision"] [data-option="${String(rest.decision)}"]`);
      if ((await page.locator(`[data-act="decide-${String(rest.decision)}"]`).count()) === 0) {
        if ((await offered.count()) === 0) await act('show-freer');
        await person.press(offered);
      }
      return kept(() => act(`decide-${String(rest.decision)}`));
    }
    case 'BOWL_WEIGHED':
      if ((await page.locator('[data-act="weigh"]').count()) === 0) await act(`mix-${sayZone(answers)}`);
      await fill(person, rest);
      return kept(() => act('weigh'));
    case 'BOWL_APPLIED':
      return kept(() => act('apply'));
    case 'BOWL_RINSED':
      return kept(() => hold(page.locator('[data-act="rinsed"]')));
    case 'FINISHED':
      return kept(() => act('finish'));
    case 'PLAN_GIVEN':
      await fill(person, rest);
      return kept(() => act('give-plan'));
    default:
      throw new Error(`Nobody has shown these hands how to say ${raw.type}`);
  }
}

const isFilled = (value: Raw): boolean => Array.isArray(value) && value.length > 0;

/** Each tap of a step that asks is kept by itself; the first tap of a step keeps even that nothing reads yet. */
/** What is said alike to several questions is one tap, where the sheet offers it; answers to which. */
async function sayTogether(person: Person, answers: RawForm): Promise<readonly string[]> {
  const place = person.page.locator('[data-together]');
  if ((await place.count()) === 0) return [];
  const names = ((await place.getAttribute('data-together')) ?? '').split(' ');
  const tile = place.locator('[data-option]');
  const option = await tile.getAttribute('data-option');
  if (!names.every((name) => answers[name] === option)) return [];
  await person.kept(() => person.press(tile));
  return names;
}

async function answerStep(person: Person, answers: RawForm): Promise<void> {
  let isFirst = true;
  const together = await sayTogether(person, answers);
  for (const [name, value] of Object.entries(answers)) {
    if (together.includes(name)) continue;
    await answer(person, name, value, (what) => {
      const more = isFirst && name === 'habits' && isFilled(value) ? 2 : 1;
      isFirst = false;
      return person.kept(what, more);
    });
  }
}

/** Plays one step of a story with fingers, so that what it says is kept at its very moment. */
export async function playStep(
  person: Person,
  { afterMs, by, raw }: StoryStep,
  look: Look = lookAway,
): Promise<void> {
  const isHeld = raw.type === 'STRAND_BROKE' || raw.type === 'BOWL_RINSED';
  const heldMs = isHeld ? ASSUMED_HOLD_MS : 0;
  await person.pass(afterMs - heldMs);
  await doIt(person, raw, look, by);
}

/** The settings of a salon, typed on a station that still has those it came with. */
export async function setUp(
  person: Person,
  name: string,
  { shelf, staff }: Pick<Settings, 'shelf' | 'staff'>,
  look: Look = lookAway,
): Promise<void> {
  await look();
  await person.act('who');
  await look();
  await person.type(person.page.locator('[data-question="name"] :is(input, textarea)'), name);
  await person.act('keep-name');
  await person.act('settings');
  await person.page.locator('main[data-step="settings"]').waitFor();
  await look();
  await person.act('section-staff');
  await look();
  await fill(person, { staff: staff.map((each) => ({ name: each })) });
  await person.act('all-settings');
  await person.act('section-shelf');
  await look();
  await fill(person, { shelf: shelf.map(({ name, kind }) => ({ name, kind })) });
  await person.act('save-settings');
  await person.page.getByText('Saved.').waitFor();
  await look();
  await person.act('bar');
}
