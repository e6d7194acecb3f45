import { render } from '@solidjs/testing-library';
import { batch, createSignal } from 'solid-js';
import { endsIronedWet } from '../../../seeds/endsIronedWet';
import { salon } from '../../../seeds/salon';
import type { StoryStep } from '../../../seeds/story';
import type { Settings } from '../../../shared/records/settings';
import { App } from '../../../src/screens/App';
import { TabletFactsProvider } from '../../../src/screens/diagnosis/diagnosisInUse';
import { LearningProvider } from '../../../src/screens/taught/learningInUse';
import { UpdatesProvider } from '../../../src/screens/update/updatesInUse';
import type { StationInUse } from '../../../src/station/createStation';
import type { DemoInUse } from '../../../src/station/demo/createDemo';
import type { LearningInUse } from '../../../src/station/learning/createLearning';
import { makeStation } from '../../../src/station/makeStation';
import type { PracticeInUse } from '../../../src/station/practice/createPractice';
import type { Others } from '../../../src/station/replicating';
import type { StationState } from '../../../src/station/stationState';
import { createClockJumps } from '../../../src/tablet/clockJumps';
import type { TabletInUse } from '../../../src/tablet/createTablet';
import type { TabletFactsInUse } from '../../../src/tablet/createTabletFacts';
import type { UpdatesInUse } from '../../../src/tablet/createUpdates';
import { makeTablet, switchOn, type Tablet } from '../storage/tablet';

/** The station with its screens over a pretended tablet: everything but the windows of a browser is the real thing. */
export async function showStation(
  options: {
    readonly tablet?: Tablet;
    readonly settings?: Settings;
    readonly atMs?: number;
    /** Puts a faulty copy in place of a good one. */
    readonly change?: Parameters<typeof switchOn>[2];
    /** Its sound and its screen. */
    readonly device?: TabletInUse;
    readonly demo?: DemoInUse;
    /** Where it is on, the station is that of practice. */
    readonly practice?: PracticeInUse;
    /** Does not wait for the months before. */
    readonly isSlow?: boolean;
    /** What its strands taught. */
    readonly learning?: LearningInUse;
    /** How it stands with other stations, and what is told when somebody shares. */
    readonly others?: Others;
    readonly onShared?: () => void;
    /** Which build runs, and which waits. */
    readonly updates?: UpdatesInUse;
    /** What can be read of it. */
    readonly facts?: TabletFactsInUse;
  } = {},
) {
  const tablet = options.tablet ?? makeTablet();
  const [nowMs, setNowMs] = createSignal(options.atMs ?? endsIronedWet.startAtMs);
  const [seenMs, setSeenMs] = createSignal(nowMs());
  const [published, setPublished] = createSignal<StationState | undefined>();
  const clockJumps = createClockJumps({ getItem: () => null, setItem: () => undefined });
  let ids = 0;
  const station = makeStation({
    store: switchOn(tablet, undefined, options.change).store,
    now: nowMs,
    makeId: () => {
      ids += 1;
      return `client${String(ids).padStart(4, '0')}`;
    },
    practice: options.practice?.isOn === true ? { readWallMs: nowMs } : undefined,
    readJumps: clockJumps.jumps,
    publish: setPublished,
    onAcknowledged: () => undefined,
    onDropped: () => undefined,
  });
  let underWay = 0;
  const follow = async <T,>(asked: Promise<T>): Promise<T> => {
    underWay += 1;
    try {
      return await asked;
    } finally {
      underWay -= 1;
    }
  };
  const inUse: StationInUse = {
    ...station,
    open: (by, answers) => follow(station.open(by, answers)),
    submitAll: (id, by, raws) => follow(station.submitAll(id, by, raws)),
    submit: (id, by, raw) => follow(station.submit(id, by, raw)),
    putOnSkinTest: (by, answers) => follow(station.putOnSkinTest(by, answers)),
    changeSkinTest: (id, by, raw) => follow(station.changeSkinTest(id, by, raw)),
    startBenchTrial: (by, answers) => follow(station.startBenchTrial(by, answers)),
    changeBenchTrial: (id, by, raw) => follow(station.changeBenchTrial(id, by, raw)),
    finishClosing: (id) => follow(station.finishClosing(id)),
    erase: (by, what) => follow(station.erase(by, what)),
    finishErasing: () => follow(station.finishErasing()),
    beginLesson: (by, lesson) => follow(station.beginLesson(by, lesson)),
    tellOfSitting: (id, by, said) => follow(station.tellOfSitting(id, by, said)),
    setSpeed: (by, times) => follow(station.setSpeed(by, times)),
    keepLesson: (by, lesson) => follow(station.keepLesson(by, lesson)),
    removeLesson: (by, id) => follow(station.removeLesson(by, id)),
    saveSettings: (by, settings) => follow(station.saveSettings(by, settings)),
    undoSettings: (by) => follow(station.undoSettings(by)),
    seenMs,
    correctClocks: async (by) => {
      const corrected = await follow(station.correctClocks(by, seenMs()));
      if (corrected.ok) setSeenMs(nowMs());
      return corrected;
    },
    jumps: clockJumps.jumps,
    saySlept: clockJumps.forget,
    sayPutAhead: async (by, jump) => {
      const said = await follow(station.sayPutAhead(by, jump));
      if (said.ok) clockJumps.forget(jump);
      return said;
    },
    state: () => published() ?? station.readState(),
    nowMs,
    askTakeOver: () => undefined,
    others: () => options.others ?? null,
    shareNow: () => options.onShared?.(),
  };
  await new Promise<void>((usable) => {
    const started = station.startWriting(options.isSlow === true ? usable : undefined);
    void started.then(usable);
  });
  if (options.settings !== undefined) await station.saveSettings('Opal', options.settings);
  const { container, unmount } = render(() => (
    <LearningProvider value={options.learning}>
      <UpdatesProvider value={options.updates}>
        <TabletFactsProvider value={options.facts}>
          <App station={inUse} tablet={options.device} demo={options.demo} practice={options.practice} />
        </TabletFactsProvider>
      </UpdatesProvider>
    </LearningProvider>
  ));

  const look = (selector: string) => container.querySelector<HTMLElement>(selector);
  const find = (selector: string): HTMLElement => {
    const element = look(selector);
    if (element === null) throw new Error(`nothing at ${selector}, but ${container.textContent}`);
    return element;
  };
  /** Everything the station was asked for is written and shown. */
  const settle = async () => {
    let quietTurns = 0;
    while (quietTurns < 3) {
      await new Promise((resolve) => setTimeout(resolve, 0));
      quietTurns = underWay === 0 ? quietTurns + 1 : 0;
    }
  };
  const tap = async (selector: string) => {
    await bring(selector);
    find(selector).click();
    await settle();
  };
  /** What is not on the sheet just now is behind its line: a question behind its own, the rest behind the last. */
  const bring = async (selector: string) => {
    if (look(selector) !== null || look('.sheet') === null) return;
    const [, path] = /^\[data-question="?([^"\]]+)"?\]/.exec(selector) ?? [];
    if (path !== undefined) await goTo(path);
    else if (look('.ledger [data-ledger=summary]') !== null) await tap('.ledger [data-ledger=summary]');
  };
  /** Presses shortly, then the second button that appears: the way of a switch. */
  const hold = async (selector: string) => {
    await bring(selector);
    const button = find(selector);
    button.click();
    const second = button.parentElement?.querySelector<HTMLElement>('.hold-confirm');
    if (second == null) throw new Error(`nothing to confirm at ${selector}`);
    second.click();
    await settle();
  };
  /** Brings a question onto its sheet, by its line in the ledger; where all are shown at once nothing is to be done. */
  const goTo = async (path: string) => {
    if (look(`[data-question="${path}"]`) !== null) return;
    if (look('[data-act=all-questions]') !== null) await tap('[data-act=all-questions]');
    const [, list, row] = /^(.+)\.(\d+)\./.exec(path) ?? [];
    if (list !== undefined && look(`[data-ledger="${path}"]`) === null) {
      await goTo(list);
      const line = `[data-row="${row}"] [data-ledger]`;
      if (look(line) === null) return;
      await tap(line);
    }
    if (look(`[data-question="${path}"]`) === null) await tap(`[data-ledger="${path}"]`);
  };
  const type = async (path: string, text: string) => {
    await goTo(path);
    const pad = `[data-question="${path}"] [data-act=another-number]`;
    if (look(`[data-question="${path}"] :is(input, textarea)`) === null) await tap(pad);
    const input = find(`[data-question="${path}"] :is(input, textarea)`) as HTMLInputElement;
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    await settle();
    return input;
  };
  /** The field of a figure as it was typed, brought onto the sheet. */
  const readTyped = async (path: string) => {
    await goTo(path);
    const field = `[data-question="${path}"]`;
    if (look(`${field} :is(input, textarea)`) === null) await tap(`${field} [data-act=another-number]`);
    return (find(`${field} :is(input, textarea)`) as HTMLInputElement).value;
  };
  const answer = async (...given: readonly (readonly [string, string])[]) => {
    for (const [path, option] of given) {
      await goTo(path);
      /** A row that is not there yet is begun by the tile of the thing itself. */
      const at = look(`[data-question="${path}"]`) === null ? path.replace(/\.\d+\..*$/, '') : path;
      const back = `[data-question="${at}"] [data-act=back-to-picks]`;
      if (look(back) !== null) await tap(back);
      await tap(`[data-question="${at}"] [data-option="${option}"]`);
    }
  };
  /** The clock goes on, or is set back; the tablet remembers the latest it showed. */
  const turnClock = async (atMs: number) => {
    batch(() => {
      setSeenMs(Math.max(seenMs(), atMs));
      setNowMs(atMs);
    });
    await settle();
  };
  /** The clock goes on at once, and a clock that nobody sets does not. */
  const jumpClock = async (aheadMs: number) => {
    const atMs = nowMs() + aheadMs;
    await turnClock(atMs);
    clockJumps.note({ atMs, aheadMs });
    await settle();
  };
  /** Steps of a story, as if they had been tapped before anybody looked; answers the id of its consultation. */
  const play = async (steps: readonly StoryStep[], openId?: string): Promise<string> => {
    let id = openId ?? '';
    for (const { afterMs, by, raw } of steps) {
      await turnClock(nowMs() + afterMs);
      const done =
        raw.type === 'OPENED' ? await station.open(by, raw.answers ?? {}) : await station.submit(id, by, raw);
      if (!done.ok) throw new Error(`${raw.type} was refused: ${JSON.stringify(done.error)}`);
      if (typeof done.value === 'string') id = done.value;
    }
    await settle();
    return id;
  };
  return {
    tablet,
    station,
    play,
    container,
    unmount,
    look,
    find,
    tap,
    hold,
    type,
    goTo,
    readTyped,
    answer,
    settle,
    turnClock,
    jumpClock,
  };
}

export type Shown = Awaited<ReturnType<typeof showStation>>;

/** A station of the invented salon with Opal at it, and Q.F. started at chair 3. */
export async function startClient(ticket = 'Q.F.', tablet: Tablet = makeTablet()): Promise<Shown> {
  const shown = await showStation({ tablet, settings: salon });
  await shown.tap('[data-act=start-here][data-chair="3"]');
  await shown.tap('[data-act=who-Opal]');
  await shown.type('ticket', ticket);
  await shown.tap('[data-act=open]');
  return shown;
}

export const clientAnswers = [
  ['service', 'lighten'],
  ['reach', 'fullHead'],
  ['targetLevel', '7'],
  ['naturalLevel', '5'],
  ['endsLevel', '5'],
  ['length', 'braLine'],
  ['reactions', 'none'],
  ['scalp', 'sound'],
  ['ageBand', 'over'],
] as const;

export const feelAnswers = [
  ['nape', 'dry'],
  ['mid', 'dry'],
  ['ends', 'dry'],
  ['porosity', 'high'],
  ['curl', 'sameAlong'],
  ['breakage', 'no'],
  ['wetStretch', 'springsBack'],
] as const;
