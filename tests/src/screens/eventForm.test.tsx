import { createRoot } from 'solid-js';
import { expect, it } from 'vitest';
import { correctedForm } from '../../../shared/records/forms/course';
import { accept, refuse } from '../../../shared/result';
import { createEventForm } from '../../../src/screens/eventForm';
import { createSender } from '../../../src/screens/sender';
import type { Submit } from '../../../src/screens/stepProps';
import { settings } from './playStory';

const { code, words } = correctedForm;

it('begins anew once it is taken, and stands as it was typed while it is not', async () => {
  const answers = [refuse({ kind: 'notNow' as const }), accept(undefined)];
  const submit: Submit = async () => answers.shift() ?? accept(undefined);
  await createRoot(async (dispose) => {
    const asked = createEventForm({ submit, settings, nowMs: 0 }, { code, words }, 'x/corrected', {});
    asked.draft.set('code', 'misheard');
    asked.draft.set('words', 'Her sister');
    expect(await asked.send('CORRECTED')).toBe(false);
    expect(asked.draft.raw()).toEqual({ code: 'misheard', words: 'Her sister' });
    expect(await asked.send('CORRECTED')).toBe(true);
    expect(asked.draft.raw()).toEqual({});
    expect(asked.refusals()).toEqual([]);
    dispose();
  });
});

it('sends again after a station that broke off in the middle', async () => {
  let tries = 0;
  const submit: Submit = async () => {
    tries += 1;
    if (tries === 1) throw new Error('broke off');
    return accept(undefined);
  };
  await createRoot(async (dispose) => {
    const sender = createSender({ submit });
    await expect(sender.send({ type: 'RESUMED' })).rejects.toThrow('broke off');
    expect(sender.isSending()).toBe(false);
    expect(await sender.send({ type: 'RESUMED' })).toBe(true);
    dispose();
  });
});
