import { render } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { expect, it } from 'vitest';

// With the server build of Solid, which a wrong condition in vitest.config.ts brings, everything renders once
// and nothing ever changes: every other test of a screen would then prove little.
it('shows the new value when a signal changes', () => {
  const [left, setLeft] = createSignal('12:47');
  const { container } = render(() => <p>{left()}</p>);
  expect(container.textContent).toBe('12:47');
  setLeft('12:46');
  expect(container.textContent).toBe('12:46');
});
