import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { afterEach, expect, it } from 'vitest';
import { Explain } from '../../../src/parts/Explain';
import { MayWriteProvider } from '../../../src/parts/useMayWrite';

afterEach(cleanup);

const show = () =>
  render(() => (
    <MayWriteProvider value={() => false}>
      <Explain title="Iron minutes">
        <p>Because of the plate</p>
      </Explain>
    </MayWriteProvider>
  ));

it('"Why?" opens the reasons, also to who only watches, and closes again', () => {
  show();
  expect(screen.queryByText('Because of the plate')).toBeNull();
  fireEvent.click(screen.getByRole('button', { name: 'Why? Iron minutes' }));
  expect(screen.getByText('Because of the plate')).not.toBeNull();
  fireEvent.click(screen.getByText('Close'));
  expect(screen.queryByText('Because of the plate')).toBeNull();
});
