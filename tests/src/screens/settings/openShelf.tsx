import { render } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { onTestFinished } from 'vitest';
import { salon } from '../../../../seeds/salon';
import type { Settings } from '../../../../shared/records/settings';
import { accept } from '../../../../shared/result';
import { dropDrafts } from '../../../../src/screens/keptDraft';
import { SettingsScreen } from '../../../../src/screens/settings/SettingsScreen';
import { press } from '../bench';

/** The settings of a station that keeps what it is given, open at the page of the second product of this shelf. */
export async function openShelf(entry: Settings['shelf'][number], startMs = 0) {
  const [inForce, setInForce] = createSignal<Settings>({
    ...salon,
    shelf: [{ name: 'Sandbar cream', kind: 'colour' }, entry],
  });
  const [nowMs, setNowMs] = createSignal(startMs);
  const { unmount } = render(() => (
    <SettingsScreen
      inForce={inForce()}
      nowMs={nowMs()}
      save={async (next) => {
        setInForce(next);
        return accept(undefined);
      }}
      onBar={() => undefined}
    />
  ));
  onTestFinished(() => {
    unmount();
    dropDrafts('settings');
  });
  await press('section-shelf');
  await press('open-spray');
  return { inForce, pass: (seconds: number) => setNowMs((now) => now + seconds * 1000) };
}
