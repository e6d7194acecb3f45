import { cleanup, fireEvent, render, screen } from '@solidjs/testing-library';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { HoldButton } from '../../../src/parts/HoldButton';
import { ASSUMED_ARMED_MS, ASSUMED_HOLD_MS } from '../../../src/parts/hold';

beforeEach(() => vi.useFakeTimers());
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

function show() {
  const onHeld = vi.fn();
  render(() => <HoldButton label="Hives" act="absolute" option="hives" onHeld={onHeld} />);
  const button = screen.getByRole('button', { name: /^Hives/ });
  const findConfirm = () => screen.queryByRole('button', { name: 'Confirm: Hives' });
  const release = () => {
    fireEvent.pointerUp(button);
    fireEvent.click(button);
  };
  return { onHeld, button, findConfirm, release };
}

describe('a button to press and hold', () => {
  it('does it once it was held long enough, and only once', () => {
    const { onHeld, button, findConfirm, release } = show();
    fireEvent.pointerDown(button);
    vi.advanceTimersByTime(ASSUMED_HOLD_MS - 1);
    expect(onHeld).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1);
    expect(onHeld).toHaveBeenCalledOnce();
    release();
    vi.advanceTimersByTime(ASSUMED_ARMED_MS);
    expect(onHeld).toHaveBeenCalledOnce();
    expect(findConfirm()).toBeNull();
  });

  /** Held to the end, the finger still down, with another button under it by then. */
  const holdUntilAnotherCameUp = () => {
    const { button, findConfirm } = show();
    const onPress = vi.fn();
    render(() => (
      <button type="button" onClick={onPress}>
        Came up
      </button>
    ));
    fireEvent.pointerDown(button);
    vi.advanceTimersByTime(ASSUMED_HOLD_MS);
    return { button, findConfirm, onPress, cameUp: screen.getByRole('button', { name: 'Came up' }) };
  };

  it('taps nothing that came under the finger when it is let go, and then everything again', () => {
    const { cameUp, onPress } = holdUntilAnotherCameUp();
    fireEvent.click(cameUp, { detail: 0 });
    expect(onPress).toHaveBeenCalledTimes(1);
    fireEvent.click(cameUp, { detail: 1 });
    expect(onPress).toHaveBeenCalledTimes(1);
    fireEvent.pointerDown(cameUp);
    fireEvent.click(cameUp, { detail: 1 });
    expect(onPress).toHaveBeenCalledTimes(2);
  });

  it('taps what a later finger means, also when its own letting go was no click', () => {
    const { cameUp, onPress } = holdUntilAnotherCameUp();
    fireEvent.pointerDown(cameUp);
    fireEvent.click(cameUp, { detail: 1 });
    expect(onPress).toHaveBeenCalledTimes(1);
  });

  it('hears a reader’s click on itself once the finger was let go', () => {
    const { button, findConfirm } = holdUntilAnotherCameUp();
    fireEvent.click(button, { detail: 1 });
    expect(findConfirm()).toBeNull();
    fireEvent.click(button, { detail: 0 });
    expect(findConfirm()).not.toBeNull();
  });

  it('does nothing by a short tap but offer a second button', () => {
    const { onHeld, button, findConfirm, release } = show();
    fireEvent.pointerDown(button);
    vi.advanceTimersByTime(100);
    release();
    vi.advanceTimersByTime(ASSUMED_HOLD_MS);
    expect(onHeld).not.toHaveBeenCalled();
    fireEvent.click(findConfirm() as HTMLElement);
    expect(onHeld).toHaveBeenCalledOnce();
    expect(findConfirm()).toBeNull();
  });

  it('takes the second button away after five seconds', () => {
    const { onHeld, button, findConfirm } = show();
    fireEvent.click(button);
    expect(findConfirm()).not.toBeNull();
    vi.advanceTimersByTime(ASSUMED_ARMED_MS);
    expect(findConfirm()).toBeNull();
    expect(onHeld).not.toHaveBeenCalled();
  });

  it('is not held by a finger that slides off', () => {
    const { onHeld, button } = show();
    fireEvent.pointerDown(button);
    fireEvent.pointerLeave(button);
    vi.advanceTimersByTime(2 * ASSUMED_HOLD_MS);
    expect(onHeld).not.toHaveBeenCalled();
  });

  it.each([' ', 'Enter'])('is held by the key %j, whose repeats count for nothing', (key) => {
    const { onHeld, button, findConfirm } = show();
    fireEvent.keyDown(button, { key });
    for (let beat = 0; beat < 7; beat += 1) {
      vi.advanceTimersByTime(100);
      fireEvent.keyDown(button, { key, repeat: true });
    }
    expect(onHeld).not.toHaveBeenCalled();
    vi.advanceTimersByTime(100);
    expect(onHeld).toHaveBeenCalledOnce();
    fireEvent.keyUp(button, { key });
    expect(findConfirm()).toBeNull();
  });

  it('offers the second button to a key let go too soon', () => {
    const { onHeld, button, findConfirm } = show();
    fireEvent.keyDown(button, { key: ' ' });
    fireEvent.keyUp(button, { key: ' ' });
    vi.advanceTimersByTime(ASSUMED_HOLD_MS);
    expect(findConfirm()).not.toBeNull();
    expect(onHeld).not.toHaveBeenCalled();
  });
});
