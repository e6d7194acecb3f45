import type { StoryStep } from '../../../seeds/story';
import type { RawForm } from '../../../shared/records/readForm';
import type { Person } from '../person';
import { playStep } from '../story';
import { fill } from '../typing';

/** The shortest way that the screens offer to say this; as the story's own hands where there is but one. */
export async function doQuickly(person: Person, step: StoryStep): Promise<void> {
  const { raw, afterMs } = step;
  const { act, press, page, kept, pass, isAt } = person;
  const answers: RawForm = raw.answers ?? {};
  switch (raw.type) {
    case 'OPENED': {
      await pass(afterMs);
      await press(page.locator(`.place[data-chair="${String(answers.chair)}"]`));
      for (const letter of String(answers.ticket)) await press(page.locator(`[data-key="${letter}"]`));
      const isBack = (await page.locator('[data-act="open-same"]').count()) > 0;
      await act(isBack ? 'open-same' : 'open');
      await page.locator('main[data-consultation]').waitFor();
      return isBack ? sayNothingNew(person) : undefined;
    }
    case 'SKIN_TEST_NOTED': {
      const { method, site } = answers;
      await pass(afterMs);
      if (answers.seen !== 'notReadYet') {
        const nothing = page.locator('[data-act="skin-test-nothing"]');
        await nothing.or(page.locator('[data-act="skin-test"]')).first().waitFor();
        if (!(await nothing.isVisible())) await act('skin-test');
        await kept(() => act('skin-test-nothing'));
        const back = page.locator('[data-act="skin-test-back"]');
        if (await back.isVisible()) await press(back);
        return;
      }
      await act('skin-test');
      await fill(person, { method, site });
      return kept(() => act('skin-test-keep'));
    }
    case 'PARKED':
      await pass(afterMs);
      await act('more-for-client');
      await act('way-park');
      await press(page.locator('[data-question="untilAtMs"] [data-option="2d"]'));
      return kept(() => act('park'));
    case 'RESUMED':
      await pass(afterMs);
      await act('parked');
      await act('open-parked');
      return kept(() => act('resume'));
    case 'REOPENED':
      // On another day, and nothing is new: all that is asked anew is one go.
      await pass(afterMs);
      await act('nothing-new');
      return isAt('decision');
    case 'BOWL_WEIGHED': {
      // What was tested stands in the bowl already.
      await pass(afterMs);
      const weigh = page.locator('[data-act="weigh"]');
      const zone = page.locator(`[data-act="mix-${String(answers.zone)}"]`);
      await weigh.or(zone).first().waitFor();
      if (!(await weigh.isVisible())) await press(zone);
      await page.locator(`[data-weighs="${String(answers.zone)}"]`).waitFor();
      return kept(() => press(weigh));
    }
    default:
      return playStep(person, step);
  }
}

/** The wet stretch of today, and that nothing is new since last time. */
async function sayNothingNew({ page, press, act, isAt }: Person): Promise<void> {
  await press(page.locator('[data-question="wetStretch"] [data-option="springsBack"]'));
  await act('nothing-new');
  await isAt('decision');
}
