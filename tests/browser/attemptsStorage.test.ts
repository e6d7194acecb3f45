import { describe, expect, it } from 'vitest';
import { endsIronedWet } from '../../seeds/endsIronedWet';
import { salon } from '../../seeds/salon';
import { lengthOf, playAlone, stepsBefore } from './makeLog';
import { readAside, readLogs, writeLogs } from './memory';
import { makePerson, type Person } from './person';
import { useStation } from './station';
import { playStep } from './story';

const station = useStation();

const { startAtMs, steps } = endsIronedWet;
const untilOnHead = steps.slice(0, steps.findIndex(({ raw }) => raw.type === 'BOWL_APPLIED') + 1);
const nowMs = startAtMs + lengthOf(untilOnHead) + 60_000;
const settings = [{ settings: salon, by: 'Opal', atMs: startAtMs - 60_000 }];
const id = 'qqqq2222pppp';

interface Entry {
  readonly type: string;
  readonly payload: Readonly<Record<string, unknown>>;
  readonly tokens: Readonly<Record<string, unknown>>;
}

const log = JSON.parse(JSON.stringify(playAlone(untilOnHead, startAtMs, salon, id).log)) as readonly Entry[];

const without = (type: string): readonly Entry[] => log.filter((entry) => entry.type !== type);

/** The ends that broke are called sound wherever the log says it, and put on with the rest. */
const endsCalledSound = log.map((entry) =>
  entry.payload.fibre === 'broken'
    ? {
        ...entry,
        payload: { ...entry.payload, fibre: 'sound', stretch: 'springsBack', level: 7, evenness: 'even' },
        tokens: { ...entry.tokens, fibre: 'sound' },
      }
    : entry,
);

const opal = (logs: Readonly<Record<string, readonly unknown[]>>, copies?: string[]) =>
  makePerson(station.browser, station.address, 'Opal', nowMs, {
    prepare: (page) => writeLogs(page, { settings, ...logs }, copies),
  });

/** Somebody else is started at the bar, as on any day. */
async function expectBarWorks(person: Person): Promise<void> {
  await person.act('who');
  await person.act('who-Opal');
  await playStep(person, {
    afterMs: 0,
    by: 'Opal',
    raw: { type: 'OPENED', answers: { ticket: 'N.N.', chair: '5' } },
  });
  await person.isAt('client');
}

/** The notices as they are read out, one after the other. */
async function readNotices(person: Person): Promise<string> {
  await person.act('read-notices');
  const said = await person.page.locator('.notice-list').textContent();
  await person.act('close-dialog');
  return said ?? '';
}

describe('a log rewritten in the browser’s own tools, every checksum right', () => {
  it('and left honest is taken up as it is', async () => {
    const person = await opal({ [`open-${id}`]: log });
    expect(await person.page.locator('.notice-bar').count()).toBe(0);
    await person.open(3);
    await person.isAt('colourOn');
  });

  it.each([
    ['without its outcomes', without('OUTCOME_RECORDED')],
    ['without its decision', without('DECIDED')],
    ['without its strands', without('STRAND_STARTED')],
    ['with the broken strand called sound', endsCalledSound],
  ] as const)('%s is set aside, named on screen, kept whole, and the bar works', async (_, claimed) => {
    const person = await opal({ [`open-${id}`]: claimed });
    expect(await person.page.locator('.place[data-consultation]').count()).toBe(0);
    const said = await readNotices(person);
    expect(said).toContain('Not taken up: the consultation of Q.F., entry');
    expect(said).toContain('Start this client anew, strand test included.');
    const aside = await readAside(person.page);
    expect(aside.map(({ kept }) => kept)).toEqual([
      expect.stringMatching(new RegExp(`^open-${id}\\.refused\\.`)),
      expect.stringMatching(new RegExp(`^aside:open-${id}:refused:`)),
    ]);
    for (const { text } of aside) expect(text.trimEnd().split('\n')).toHaveLength(claimed.length);
    await expectBarWorks(person);
    await person.reload();
    expect(await person.page.locator('.place[data-consultation]').count()).toBe(1);
    expect(await readAside(person.page)).toEqual(aside);
  });

  it.each(['journal', 'index'] as const)(
    'in the %s alone contradicts the other copy: both are set aside and named',
    async (copy) => {
      const other = copy === 'journal' ? 'index' : 'journal';
      const person = await makePerson(station.browser, station.address, 'Opal', nowMs, {
        prepare: async (page) => {
          const untilDecided = log.slice(
            0,
            log.findIndex(({ type }) => type === 'OUTCOME_RECORDED'),
          );
          await writeLogs(page, { settings, [`open-${id}`]: untilDecided }, [other]);
          await writeLogs(page, { settings, [`open-${id}`]: without('OUTCOME_RECORDED') }, [copy]);
        },
      });
      const said = await readNotices(person);
      expect(said).toContain('the consultation of a client who cannot be named');
      expect(await person.page.locator('.place[data-consultation]').count()).toBe(0);
      expect(await readAside(person.page)).toHaveLength(2);
      await expectBarWorks(person);
    },
  );

  it('while the station runs: its journal is held, and the rewritten index changes nothing', async () => {
    const untilOutcome = stepsBefore(steps, 'OUTCOME_RECORDED');
    const honest = playAlone(untilOutcome, startAtMs, salon, id).log;
    const person = await opal({ [`open-${id}`]: honest });
    await person.open(3);
    const outcome = {
      zone: 'lengths',
      fibre: 'rough',
      stretch: 'springsBack',
      level: '7',
      wentPast30: 'no',
      evenness: 'even',
    };
    await playStep(person, { afterMs: 0, by: 'Opal', raw: { type: 'OUTCOME_RECORDED', answers: outcome } });
    const forged = { [`open-${id}`]: without('OUTCOME_RECORDED') };
    await expect(writeLogs(person.page, forged, ['journal'])).rejects.toThrow('NoModificationAllowedError');
    await writeLogs(person.page, forged, ['index']);
    expect(await person.page.locator('[data-knot="untied"]').count()).toBe(0);
    await person.isAt('outcome');
    await person.reload();
    expect(await person.page.locator('.place[data-consultation]').count()).toBe(0);
    expect(await readNotices(person)).toContain('the consultation of a client who cannot be named');
    const logs = await readLogs(person.page);
    expect([...logs.keys()].filter((name) => name.startsWith('open-'))).toEqual([]);
    await expectBarWorks(person);
  });
});
