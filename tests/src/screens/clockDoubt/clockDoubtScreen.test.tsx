import { render } from '@solidjs/testing-library';
import { expect, it, onTestFinished } from 'vitest';
import { refuse } from '../../../../shared/result';
import { ClockDoubt } from '../../../../src/screens/clockDoubt/ClockDoubt';
import { press, seen } from '../bench';

it('says that moving the clocks could not be written, instead of that the tablet still lies behind', async () => {
  const { unmount } = render(() => (
    <ClockDoubt
      doubt={{ newestAtMs: 60_000, behindMs: 60_000 }}
      nowMs={0}
      correct={async () => refuse({ kind: 'notWriting' })}
    />
  ));
  onTestFinished(unmount);
  await press('clock-is-right');
  expect(seen('.refusal')).toContain('This window cannot write now.');
  expect(seen('[role=status]')).toBe('');
});
