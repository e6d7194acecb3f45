// A seed story played through judge and chart, told as Markdown: what was done, where it led, and the knot.
import { join } from 'node:path';
import { runnerImport } from 'vite';

const root = join(import.meta.dirname, '..');

/** @param {string} path */
const load = async (path) => {
  const { module } = await runnerImport(join(root, path), { root, configFile: false, logLevel: 'error' });
  return module;
};

/** @typedef {typeof import('../seeds/endsIronedWet')} Seed */
/** @typedef {typeof import('../shared/records/classify')} Classify */
/** @typedef {typeof import('../machines/consultation/consultation')} Chart */
/** @typedef {typeof import('../shared/judgement/permit')} Permit */
/** @typedef {import('../machines/consultation/consultation').Consultation} Consultation */

const seed = /** @type {Seed} */ (await load('seeds/endsIronedWet.ts'));
const { classify } = /** @type {Classify} */ (await load('shared/records/classify.ts'));
const { advance, beginConsultation } = /** @type {Chart} */ (
  await load('machines/consultation/consultation.ts')
);
const { issuePermit } = /** @type {Permit} */ (await load('shared/judgement/permit.ts'));

/** Where the chart is, in its own words. @param {Consultation} consultation */
const whereIs = ({ state: { value } }) => {
  if (typeof value === 'string') return value;
  const { way } = /** @type {{ way: string | Record<string, string> }} */ (value.open);
  return typeof way === 'string' ? way : Object.entries(way).flat().join('.');
};

/** @param {number} ms */
const sayClock = (ms) => {
  const minutes = Math.floor(ms / 60_000);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
};

/** Plays the story; throws at the first refusal. Answers one row for each thing done. */
export const tellStory = () => {
  const { settings, startAtMs, steps } = seed.endsIronedWet;
  const rows = ['| h:mm | done | led to | lengths |', '|---|---|---|---|'];
  let consultation = beginConsultation('story');
  let atMs = startAtMs;
  for (const { afterMs, by, raw } of steps) {
    atMs += afterMs;
    const event = classify(consultation.record, raw, {
      settings,
      settingsId: 0,
      atMs,
      by,
      inheritsStop: false,
    });
    if (!event.ok) throw new Error(`${raw.type}: ${JSON.stringify(event.error)}`);
    const next = advance(consultation, event.value);
    if (!next.ok) throw new Error(`${raw.type}: ${next.error}`);
    consultation = next.value;
    const permit = issuePermit(consultation.record, 'lengths', settings, atMs);
    const knot = permit.ok ? 'OK to mix' : `no mix: ${permit.error.code}`;
    const {
      zone = '',
      decision = '',
      fibre = '',
    } = /** @type {Record<string, string>} */ (raw.answers ?? {});
    const step = 'step' in raw ? raw.step : (raw.answers?.step ?? '');
    const what = [raw.type, zone, step, decision, fibre].filter((word) => word !== '').join(' ');
    rows.push(`| ${sayClock(atMs - startAtMs)} | ${what} | ${whereIs(consultation)} | ${knot} |`);
  }
  return rows.join('\n');
};
