/**
 * Minutes of wet ironing that make one boil equivalent.
 * common practice, no source: half an hour in boiling water sets a curl for good; 312 minutes are 10.4 such half hours. A
 * picture to talk by, not a measurement; damp minutes do not count, since the rule speaks of wet hair.
 * Checked by tests/evidence/heatPractice.test.ts.
 */
export const MINUTES_A_BOIL = 30;
