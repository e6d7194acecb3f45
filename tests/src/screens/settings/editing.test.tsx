import { createRoot, createSignal } from 'solid-js';
import { expect, it, onTestFinished } from 'vitest';
import { accept } from '../../../../shared/result';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { createEditing } from '../../../../src/screens/settings/editing';
import { settings } from '../playStory';

it('the fields are not read anew because a second has passed, only because something was typed', async () => {
  // Files share their modules, and another may have left its fields half filled in.
  dropDrafts('settings');
  const [nowMs, setNowMs] = createSignal(0);
  const { editing, dispose } = createRoot((disposeRoot) => ({
    editing: createEditing({
      inForce: settings,
      get nowMs() {
        return nowMs();
      },
      save: async () => accept(undefined),
    }),
    dispose: disposeRoot,
  }));
  onTestFinished(() => {
    dispose();
    dropDrafts('settings');
  });
  editing.draft.set('chairs', '99');
  for (const tried of [false, true]) {
    if (tried) await editing.save();
    const before = editing.refusals();
    expect(before.map(({ path }) => path)).toEqual(['chairs']);
    setNowMs((now) => now + 1000);
    expect(editing.refusals()).toBe(before);
  }
  editing.draft.set('chairs', '98');
  expect(editing.refusals()).not.toHaveLength(0);
  editing.draft.set('chairs', '8');
  expect(editing.refusals()).toEqual([]);
});
