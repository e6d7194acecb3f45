import { render } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { describe, expect, it } from 'vitest';
import type { Answers } from '../../../../shared/records/forms/asked';
import { defaultSettings, type Settings } from '../../../../shared/records/settings';
import { StrandMap } from '../../../../src/parts/strandMap/StrandMap';
import { explainHair } from '../../../../src/screens/map/explainHair';
import { sayStrandMap } from '../../../../src/screens/map/sayStrandMap';
import { viewHair } from '../../../../src/screens/map/viewHair';
import { findWords } from '../../../../src/words/words';
import { ironTold } from '../../../shared/hair/told';

const words = findWords('en');
const metric: Settings = {
  ...defaultSettings,
  units: { temperature: 'C', mass: 'g', length: 'cm' },
};
const told: Answers = {
  client: { service: 'lighten', reach: 'fullHead', length: 'collarbone', greyPercent: 0 },
  hotTools: { habits: [ironTold], history: ['none'] },
};
const tell = (change: Partial<NonNullable<Answers['hotTools']>>): Answers => ({
  ...told,
  hotTools: { ...told.hotTools, ...change },
});
const mapOf = (answers: Answers, settings = metric) =>
  sayStrandMap(viewHair(answers, settings), answers, words, settings.units);
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const explain = (answers: Answers, settings = metric) =>
  Object.fromEntries(
    explainHair(viewHair(answers, settings), answers, words, settings).map((each) => [each.id, each]),
  );

describe('the strand map', () => {
  it('says the whole picture in words', () => {
    expect(plain(mapOf(told).said)).toBe(
      'From the scalp to the tip at 33 cm: iron minutes up to about 312 min (284–312 min). colour: all of it. ' +
        'hot enough for many tiny holes (published). hot enough for boiling water (common practice). ' +
        'Snip 1: Hairline, 23 cm down the strand: the finest hair. Snip 2: Where she irons, 33 cm down the strand: ironed wet.',
    );
  });

  it('draws what it says, and redraws when an answer changes', () => {
    const [answers, setAnswers] = createSignal(told);
    const { container } = render(() => <StrandMap view={mapOf(answers())} />);
    const find = (selector: string) => container.querySelectorAll(selector);
    const line = () => find('.map-line')[0]?.getAttribute('d');
    expect(find('svg')[0]?.getAttribute('aria-label')).toBe(mapOf(told).said);
    expect(find('[data-map=snip]')).toHaveLength(2);
    expect([...find('[data-reached]')].map((bar) => bar.getAttribute('data-reached'))).toEqual([
      'poresRiseFast',
      'waterBoils',
    ]);
    const before = line();
    setAnswers(tell({ habits: [{ ...ironTold, forMonths: 12, settingC: 230 }] }));
    expect(line()).not.toBe(before);
    expect([...find('[data-reached]')].map((bar) => bar.getAttribute('data-reached'))).toEqual([
      'meltsOnSlowPasses',
      'cortexSoftens',
    ]);
    setAnswers({ ...told, client: { ...told.client, reach: 'endsOut' } });
    expect(find('[data-map=reach]')[0]?.textContent).toBe('colour: not the ends');
    expect(find('[data-map=snip]')).toHaveLength(1);
    setAnswers({ ...told, client: { ...told.client, reach: 'roots' } });
    expect(find('[data-map=reach]')[0]?.textContent).toBe('colour: roots');
  });

  it('shows where bleach lies, and none on what grew since', () => {
    const map = mapOf(
      tell({ history: ['lightener'], bleaches: 1, lastBleachMonthsAgo: 6, bleachReach: 'all' }),
    );
    expect(map.bleached).toHaveLength(1);
    expect(map.bleached[0]).toMatchObject({ id: '1', name: 'bleached 1×', toCm: 33 });
    expect(map.bleached[0]?.fromCm).toBeGreaterThan(6);
    expect(map.bleached[0]?.fromCm).toBeLessThan(7.5);
  });

  it('says bleach in its words as it draws it, and as perhaps where nobody told so much', () => {
    const bleached = { history: ['lightener' as const], lastBleachMonthsAgo: 6 };
    const map = mapOf(tell({ ...bleached, bleaches: 1, bleachReach: 'all' }));
    expect(plain(map.said)).toContain('bleached 1× from 7 cm to 33 cm.');
    const unsure = mapOf(tell({ ...bleached, bleaches: 'unknown' }));
    expect(plain(unsure.said)).toContain('perhaps bleached 2× from');
  });

  it('leaves the heat out of picture and words where it is only asked where to snip', () => {
    const map = sayStrandMap(viewHair(told, metric), told, words, metric.units, 'whereToSnip');
    expect(map.reached).toEqual([]);
    expect(map.said).not.toContain('hot enough');
    expect(map.said).toContain('Snip 2');
  });

  it('calls what only an unknown setting may have reached perhaps', () => {
    const names = (habits: NonNullable<NonNullable<Answers['hotTools']>['habits']>) =>
      mapOf(tell({ habits })).reached.map(({ name }) => name);
    expect(names([{ ...ironTold, settingC: 'unknown' }])).toEqual([
      'perhaps for melting on slow passes (published)',
      'perhaps for burning (common practice)',
    ]);
    expect(names([ironTold, { ...ironTold, settingC: 'unknown' }])).toEqual([
      'hot enough for many tiny holes (published)',
      'hot enough for boiling water (common practice)',
    ]);
  });

  it('starts a threshold where hair was there when she still did', () => {
    const [reached] = mapOf(tell({ habits: [{ ...ironTold, stoppedMonthsAgo: 12 }] })).reached;
    expect(reached?.fromCm).toBeCloseTo(52 * 0.2177, 5);
  });

  it('is flat and has one line where nothing was told', () => {
    const map = mapOf({ client: told.client ?? {}, hotTools: { habits: [], history: ['none'] } });
    expect(map.ticks.map(({ name }) => name)).toEqual(['0']);
    expect(map.points.every(({ high }) => high === 0)).toBe(true);
    expect(map.reached).toEqual([]);
  });

  it('says the same hair in either unit', () => {
    const inches = { ...metric, units: { temperature: 'F', mass: 'oz', length: 'in' } } as const;
    const [one, other] = [viewHair(told, metric), viewHair(told, inches)];
    expect(other).toEqual(one);
    expect(plain(mapOf(told, inches).said)).toContain('to the tip at 13 in');
  });
});

describe('why', () => {
  it('is told of every figure: inputs, formula, source and mark', () => {
    const figures = explainHair(viewHair(told, metric), told, words, metric);
    expect(figures).toHaveLength(11);
    for (const { id, name, value, how, source, inputs } of figures) {
      for (const text of [name, value, how]) expect(text, id).not.toBe('');
      expect(inputs.length, id).toBeGreaterThan(0);
      expect(source, id).toMatch(/^(Published|Common practice, no source|Assumed by us|Exact)(: .+)?$/);
    }
  });

  it('gives a band, and never a figure, beyond what was measured', () => {
    const { helixLeft, tryptophanLeft, ironMin } = explain(told);
    expect(plain(helixLeft?.value ?? '')).toMatch(/^beyond what was measured: \d+–\d+ %$/);
    expect(plain(tryptophanLeft?.value ?? '')).toMatch(/^beyond what was measured: \d+–\d+ %$/);
    expect(plain(ironMin?.value ?? '')).toBe('about 312 min (284–312 min)');
    const taped = { ...told, client: { ...told.client, lengthCm: 33 } };
    expect(plain(explain(taped).ironMin?.value ?? '')).toBe('312 min');
    const once = tell({ habits: [{ ...ironTold, wetness: 'dry', forMonths: 0.25, daysAWeek: 0.25 }] });
    expect(explain(once).helixLeft?.value).not.toContain('beyond');
  });

  it('names what she said, and that the rest was taken wide', () => {
    const unsure = tell({ habits: [{ ...ironTold, daysAWeek: 'unknown', stoppedMonthsAgo: 6 }] });
    expect(plain(explain(unsure).ironMin?.inputs[0] ?? '')).toBe(
      'Flat iron: wet, 60 s a section, as is usual, days a week not known: taken wide, for 24 months, stopped 6 months ago',
    );
  });

  it('boils water where the salon lies', () => {
    const high = { ...metric, altitudeM: 2_000 };
    expect(plain(explain(told, high).boilingPoint?.value ?? '')).toBe('93 °C');
    expect(explain(told, high).boilingPoint?.inputs).toEqual(['2000 metres above the sea']);
  });

  it('writes differences of temperature as such in °F', () => {
    const fahrenheit = { ...metric, units: { ...metric.units, temperature: 'F' } } as const;
    expect(plain(explain(told, fahrenheit).hairTemperature?.how ?? '')).toContain('less 0–90 °F');
    expect(plain(explain(told).hairTemperature?.how ?? '')).toContain('less 0–50 °C');
  });
});
