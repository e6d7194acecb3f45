import { cleanup } from '@solidjs/testing-library';
import { afterEach, describe, expect, it } from 'vitest';
import { digestLesson } from '../../../../machines/practice/practiceEvent';
import { lessons } from '../../../../seeds/practice/lessons';
import { sayLesson } from '../../../../seeds/practice/sayLesson';
import { salon } from '../../../../seeds/salon';
import { openSchool } from '../../../../src/demo/lessons';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { settlePractice } from '../../../../src/station/practice/createPractice';
import { showStation } from '../stationOnTablet';
import { makePractice } from './inPractice';

const [lesson] = lessons.map((each) => each.lesson).filter(({ id }) => id === 'blackTattoo');
if (lesson === undefined) throw new Error('no such lesson');

let ids: readonly string[] = [];
afterEach(() => {
  cleanup();
  for (const id of ids) dropDrafts(id);
});

/** Practice whose lessons are said in Spanish, whatever the rest of the station speaks. */
async function beginInSpanish() {
  const school = { ...openSchool(), say: (sentence: string) => sayLesson(sentence, 'es') };
  const practice = { ...makePractice(true).practice, school: () => school };
  const shown = await showStation({ practice, settings: settlePractice(salon) });
  const tile = shown.find('[data-act=lesson-blackTattoo]').textContent;
  await shown.tap('[data-act=lesson-blackTattoo]');
  const dialog = shown.find('dialog[open]').textContent;
  await shown.tap('[data-act=begin-hints]');
  if (shown.look('[data-act=who-Opal]') !== null) await shown.tap('[data-act=who-Opal]');
  ids = [...shown.station.readState().open.keys()];
  return { shown, tile, dialog };
}

describe('a lesson in the language of the station', () => {
  it('says its title, her wish, her answers and its hints, and is kept as it was written', async () => {
    const { shown, tile, dialog } = await beginInSpanish();
    expect(tile).toContain('Un tatuaje de vacaciones');
    expect(dialog).toContain('Un tatuaje de vacaciones');
    expect(shown.find('.practice-ribbon').textContent).toContain('Un tatuaje de vacaciones');
    expect(shown.find('[data-heard="client.service"]').textContent).toContain('¡Mi primera vez!');
    await shown.goTo('reactions');
    expect(shown.find('[data-heard="client.reactions"]').textContent).toContain('nunca reaccioné');
    await shown.tap('[data-act=ask-closer]');
    expect(shown.find('[data-heard="client.reactions"]').textContent).toContain('ampollas');
    await shown.goTo('service');
    await shown.answer(
      ['service', 'depositOnly'],
      ['reach', 'fullHead'],
      ['targetLevel', '5'],
      ['naturalLevel', '5'],
      ['endsLevel', '5'],
      ['length', 'collarbone'],
      ['reactions', 'none'],
      ['scalp', 'sound'],
      ['ageBand', 'over'],
    );
    await shown.tap('[data-act=next]');
    const hint = shown.find('[data-panel=passed-over]').textContent;
    expect(hint).toContain('no se le pone color');
    expect(hint).toContain('texto de etiqueta');
    const [log] = [...(shown.station.readState().practice?.sittings.values() ?? [])];
    expect(log?.[0]?.payload).toMatchObject({ lessonId: lesson.id, digest: digestLesson(lesson) });
    expect(JSON.stringify(log)).not.toContain('tatuaje');
  });
});
