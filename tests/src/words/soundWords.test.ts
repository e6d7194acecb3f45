import { describe, expect, it } from 'vitest';
import { decision } from '../../../src/words/en/decision';
import { heatSprayWords } from '../../../src/words/en/forms/heatSpray';
import { mixWords } from '../../../src/words/en/forms/strand';
import { heat } from '../../../src/words/en/heat';
import { reaction } from '../../../src/words/en/reaction';
import { refusals } from '../../../src/words/en/refusals';
import { strandTest } from '../../../src/words/en/strandTest';

describe('what is said of hair', () => {
  it('clears no hair for want of a sign: the strand decides', () => {
    expect(strandTest.care.low).not.toMatch(/nothing speaks/i);
    expect(strandTest.care.low).toContain('decides');
  });

  it('clears no setting: 132 to 152 °C cost tryptophan, 200 °C half the helix in 20 to 25 min of contact', () => {
    // published: McMullen & Jachowicz, J. Cosmet. Sci. 49:245–256, 1998; Thermochim. Acta 661:78–83, 2018.
    expect(heat.todayReaches).not.toMatch(/nothing of what is known/i);
    expect(heat.todayReaches).toContain('Each pass still takes something');
  });

  it('calls nobody knowing no sign of damage', () => {
    const { careful, ironedHair, oneStrandTooFew } = decision.reasons;
    expect([careful, ironedHair, oneStrandTooFew].filter((said) => /damage/i.test(said))).toEqual([]);
    expect(careful).toContain('not known');
  });

  it('leaves nobody a way round taking a stretchy strand off', () => {
    expect(strandTest.processing.stretchy).not.toContain('unless');
  });

  it('names the ways out by what stands on the buttons', () => {
    expect(refusals.permit.reaction.clears.toLowerCase()).toContain(reaction.notAReaction.toLowerCase());
  });

  it('warns of dry heat on lightener where the heat is chosen, before anything is on', () => {
    expect(mixWords.heat).toMatchObject({ hint: expect.stringMatching(/dryer.*lightener.*maker/) });
  });

  it('warns of a spray near plates where the spray is chosen', () => {
    expect(heatSprayWords.spray).toMatchObject({ hint: expect.stringMatching(/aerosol.*plates/) });
  });
});
