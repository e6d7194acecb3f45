import {
  advance,
  beginConsultation,
  type Consultation,
} from '../../../../machines/consultation/consultation';
import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import { firstGloss, returningGloss } from '../../../../seeds/returningGloss';
import { type Shown, showStation } from '../stationOnTablet';
import { minute } from './starts';
import { hearTaps, type Tapped } from './tappedClient';

const only = (shown: Shown): Consultation => {
  const [first] = shown.station.readState().open.values();
  if (first === undefined) throw new Error('nobody is open');
  return first;
};

/** What the log has more than before, each event from the state that it found. */
function listMore(
  { id, log }: Consultation,
  known: number,
  screen: string,
  taps: readonly string[],
): Tapped[] {
  const more: Tapped[] = [];
  log.reduce((consultation, event, index) => {
    if (index >= known) more.push({ from: consultation.state, event, screen, taps });
    const next = advance(consultation, event);
    if (!next.ok) throw new Error(`${event.type} does not follow`);
    return next.value;
  }, beginConsultation(id));
  return more;
}

/** Taps on the whole station, and the events they led to. */
async function watch(shown: Shown, known: number, go: () => Promise<void>): Promise<readonly Tapped[]> {
  const heard = hearTaps();
  await go();
  heard.stop();
  return listMore(only(shown), known, heard.screen(), heard.taps());
}

const until = (type: string) =>
  endsIronedWet.steps.slice(0, endsIronedWet.steps.findIndex(({ raw }) => raw.type === type) + 1);

async function start(shown: Shown): Promise<void> {
  await shown.tap('[data-act=start-here][data-chair="3"]');
  if (shown.look('[data-act=who-Opal]') !== null) await shown.tap('[data-act=who-Opal]');
  await shown.type('ticket', 'Q.F.');
  await shown.tap('[data-act=open]');
}

/** What no screen of one client leads to: starting her, the alarm, the tablet's clock, last time. */
export const stationWays: readonly {
  readonly name: string;
  readonly tap: () => Promise<readonly Tapped[]>;
}[] = [
  {
    name: 'a client is started',
    tap: async () => {
      const shown = await showStation({ settings: endsIronedWet.settings });
      return watch(shown, 0, () => start(shown));
    },
  },
  {
    name: 'a client is started whose earlier record ended in a stop',
    tap: async () => {
      const shown = await showStation({ settings: endsIronedWet.settings });
      const [opened, client] = endsIronedWet.steps;
      if (opened === undefined || client === undefined) throw new Error('the story has no beginning');
      const raw = { ...client.raw, answers: { ...client.raw.answers, scalp: 'broken' } } as typeof client.raw;
      const over = { type: 'WE_SAID_NO', answers: { reason: 'notSafeToday' } } as const;
      await shown.play([opened, { ...client, raw }, { ...client, raw: over }]);
      return watch(shown, 0, () => start(shown));
    },
  },
  {
    name: 'the alarm is heard',
    tap: async () => {
      const shown = await showStation({ settings: endsIronedWet.settings });
      await shown.play(until('STRAND_STARTED'));
      const { log, record } = only(shown);
      await shown.turnClock(record.newestAtMs + 5 * minute);
      return watch(shown, log.length, () => shown.tap('[data-act=silence]'));
    },
  },
  {
    name: 'the tablet’s clock is right though it was set back',
    tap: async () => {
      const shown = await showStation({ settings: endsIronedWet.settings });
      await shown.play(until('STRAND_STARTED'));
      const { log, record } = only(shown);
      await shown.turnClock(record.newestAtMs - 60 * minute);
      return watch(shown, log.length, async () => {
        await shown.tap('[data-act=clock-is-right]');
        await shown.tap('[data-act=who-Opal]');
      });
    },
  },
  {
    name: 'last time is carried',
    tap: async () => {
      const shown = await showStation({ settings: firstGloss.settings, atMs: firstGloss.startAtMs });
      await shown.play(firstGloss.steps);
      await shown.turnClock(returningGloss.startAtMs);
      await shown.tap('[data-act=start-here][data-chair="2"]');
      await shown.tap('[data-act=who-Juno]');
      for (const letter of 'LM') await shown.tap(`[data-key="${letter}"]`);
      await shown.tap('[data-act=open-same]');
      return watch(shown, 1, async () => {
        await shown.answer(['wetStretch', 'springsBack']);
        await shown.tap('[data-act=nothing-new]');
      });
    },
  },
];
