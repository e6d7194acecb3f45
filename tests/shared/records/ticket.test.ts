import { describe, expect, it } from 'vitest';
import { salon } from '../../../seeds/salon';
import { openedForm } from '../../../shared/records/forms/course';
import { skinTestForms } from '../../../shared/records/forms/skinTest';
import { readForm } from '../../../shared/records/readForm';
import { findTooPersonal } from '../../../shared/records/ticket';

describe('a ticket', () => {
  it.each(['12.05.1990', '5/12/90', '1990-05-12', '12 05 1990', '19900512', '12051990', '05121990'])(
    'is no date of birth: %s',
    (typed) => expect(findTooPersonal(typed)).toBe('isBirthDate'),
  );

  it.each(['+49 30 1234', '555-0123', '030 1234567', '5550123456', '(555) 01234', '0301234567'])(
    'is no phone number: %s',
    (typed) => expect(findTooPersonal(typed)).toBe('isPhone'),
  );

  it.each([
    'Q.F.',
    'LM',
    '17',
    '04171',
    '123456789',
    '120590',
    '19901399',
    '555-01',
    'HERON',
    'A12-05-90',
    'card 1234567',
    '',
  ])('may be the salon’s own code: %s', (typed) => expect(findTooPersonal(typed)).toBeNull());

  it.each([
    ['a start', { ticket: openedForm.ticket }],
    ['a skin test', { ticket: skinTestForms.SKIN_TEST_PUT_ON.ticket }],
  ])('that says who she is outside the salon is refused at its field by %s', (_what, form) => {
    const read = (ticket: string) =>
      readForm(form, { ticket }, { units: salon.units, hasAgeLine: false, nowMs: 0 });
    expect(read('12.05.1990')).toEqual({ ok: false, error: [{ path: 'ticket', code: 'isBirthDate' }] });
    expect(read('555-0123')).toEqual({ ok: false, error: [{ path: 'ticket', code: 'isPhone' }] });
    expect(read('HERON')).toEqual({ ok: true, value: { ticket: 'HERON' } });
  });
});
