import { cleanup, fireEvent, render } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, expect, it } from 'vitest';
import { LetterPad } from '../../../src/parts/LetterPad';
import { MayWriteProvider } from '../../../src/parts/useMayWrite';

afterEach(cleanup);

it('letters and figures are added to what stands there, and the last is taken away whole', () => {
  const [text, setText] = createSignal('🌊');
  const { container } = render(() => <LetterPad text={text()} onChange={setText} />);
  const tap = (key: string) => fireEvent.click(container.querySelector(`[data-key="${key}"]`) as HTMLElement);
  for (const key of ['Q', '.', '7']) tap(key);
  expect(text()).toBe('🌊Q.7');
  for (let times = 0; times < 4; times += 1) tap('back');
  expect(text()).toBe('');
  tap('back');
  expect(text()).toBe('');
});

it('are closed where this window only watches', () => {
  const { container } = render(() => (
    <MayWriteProvider value={() => false}>
      <LetterPad text="" onChange={() => undefined} />
    </MayWriteProvider>
  ));
  expect((container.querySelector('.letter-pad') as HTMLFieldSetElement).disabled).toBe(true);
});
