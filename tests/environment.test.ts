import { expect, it } from 'vitest';

it('runs in the pinned time zone and language, wherever it runs', () => {
  const { timeZone, locale } = Intl.DateTimeFormat().resolvedOptions();
  expect({ timeZone, locale }).toEqual({ timeZone: 'America/St_Johns', locale: 'en-US' });
  // Half an hour off every full hour, and summer time: what takes local time for granted fails here.
  expect(new Date('2025-01-15T12:00:00Z').getTimezoneOffset()).toBe(210);
  expect(new Date('2025-07-15T12:00:00Z').getTimezoneOffset()).toBe(150);
});
