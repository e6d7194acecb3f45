import { cleanup, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { afterEach, describe, expect, it } from 'vitest';
import { waySteps } from '../../../shared/records/steps';
import { type KnotReason, StrandRail } from '../../../src/parts/StrandRail';

afterEach(cleanup);

const listItems = () => screen.getAllByRole('listitem').map((item) => item.textContent);

describe('the strand rail', () => {
  it('has a knot right before the mix, and says why it is tied', () => {
    render(() => <StrandRail here="strandTest" knot="noOutcome" />);
    const items = listItems();
    expect(items).toHaveLength(waySteps.length + 1);
    expect(items[items.findIndex((text) => text?.startsWith('Mix')) - 1]).toBe(
      'No mix yet: record the outcome',
    );
  });

  it('says at the finish that another mix is what it holds up', () => {
    render(() => <StrandRail here="finish" knot="strandUsed" />);
    expect(listItems()).toContain('No more mix: a new strand first');
  });

  it('unties the knot in words and shape', () => {
    const [knot, setKnot] = createSignal<KnotReason>('notDecided');
    const { container } = render(() => <StrandRail here="mix" knot={knot()} />);
    expect(container.querySelector('.knot')?.getAttribute('data-knot')).toBe('tied');
    setKnot(null);
    expect(container.querySelector('.knot')?.getAttribute('data-knot')).toBe('untied');
    expect(listItems()).toContain('OK to mix');
  });

  it('says which step is behind, here and to come', () => {
    render(() => <StrandRail here="feelHair" knot="stepUnsaid" />);
    expect(listItems().slice(0, 4)).toEqual([
      'Clientdone',
      'Hot toolsdone',
      'Feel the hairhere now',
      'Heat sprayto come',
    ]);
    expect(screen.getAllByRole('listitem', { current: 'step' })).toHaveLength(1);
  });

  it('keeps what was said done where she went back before it', () => {
    render(() => <StrandRail here="hotTools" knot="stepUnsaid" isSaid={(step) => step === 'heatSpray'} />);
    expect(listItems().slice(0, 4)).toEqual([
      'Clientdone',
      'Hot toolshere now',
      'Feel the hairto come',
      'Heat spraydone',
    ]);
  });

  it('says of a toner what it waits for', () => {
    render(() => <StrandRail here="colourOn" knot="stretchUnfelt" />);
    expect(listItems()).toContain('No toner: feel it wet first');
  });

  it('shows no step as done when she is stopped', () => {
    render(() => <StrandRail here={null} knot="stopped" />);
    expect(listItems().filter((text) => text?.endsWith('done'))).toEqual([]);
  });
});
