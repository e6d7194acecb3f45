import { describe, expect, it } from 'vitest';
import { findStrandKind } from '../../../shared/judgement/strandKind';
import { clientForm } from '../../../shared/records/forms/client';

describe('the kind of strand', () => {
  it('is full for every lightening and lift, and short where colour is only deposited', () => {
    const kinds = clientForm.service.options.map((service) => [service, findStrandKind(service)]);
    expect(Object.fromEntries(kinds)).toEqual({
      lighten: 'full',
      liftAndDeposit: 'full',
      depositOnly: 'short',
      gloss: 'short',
      tone: 'short',
    });
  });

  it('is full while nobody has said what she wants', () => {
    expect(findStrandKind(undefined)).toBe('full');
  });
});
