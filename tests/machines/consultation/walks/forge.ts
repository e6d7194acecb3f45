import { formMixKey } from '../../../../shared/judgement/mixes';
import type { EventOf, EventType } from '../../../../shared/records/event';
import type { findGate, Log } from './countWalk';
import { cream, powder } from './rawTaps';

type Gate = ReturnType<typeof findGate>;
type Loose = Record<string, unknown>;

/** The log with one event changed by hand. */
const edit = (log: Log, seq: number, part: 'payload' | 'tokens', change: Loose): Log =>
  log.map((event, index) =>
    index === seq ? ({ ...event, [part]: { ...event[part], ...change } } as typeof event) : event,
  );

const at = <T extends EventType>(log: Log, seq: number): EventOf<T> => log[seq] as EventOf<T>;

/** What somebody might change in a stored log so that it claims a bowl it should not; null where nothing is changed. */
export const forgeries: Readonly<Record<string, (log: Log, gate: Gate) => Log | null>> = {
  'the outcome is cut out': (log, { outcomeSeq }) => log.filter((_event, seq) => seq !== outcomeSeq),
  'the decision is cut out': (log, { decisionSeq }) => log.filter((_event, seq) => seq !== decisionSeq),
  'the strand is cut out': (log, { startSeq }) => log.filter((_event, seq) => seq !== startSeq),
  'the outcome says gummy': (log, { outcomeSeq }) => edit(log, outcomeSeq, 'payload', { fibre: 'gummy' }),
  'the outcome says gummy, its tokens too': (log, { outcomeSeq }) =>
    edit(edit(log, outcomeSeq, 'payload', { fibre: 'gummy' }), outcomeSeq, 'tokens', { fibre: 'gummy' }),
  'the decision says no': (log, { decisionSeq }) =>
    edit(log, decisionSeq, 'payload', { decision: 'weSayNo' }),
  'the decision says several visits, its tokens too': (log, { decisionSeq }) => {
    const change = { decision: 'severalVisits' };
    return edit(edit(log, decisionSeq, 'payload', change), decisionSeq, 'tokens', change);
  },
  'the bowl is stronger than what was tested': (log, { bowlSeq, startSeq }) => {
    const stronger = at<'STRAND_STARTED'>(log, startSeq).payload.developerPercent + 1;
    return stronger > 12 ? null : edit(log, bowlSeq, 'payload', { developerPercent: stronger });
  },
  'the bowl stays longer': (log, { bowlSeq }) => edit(log, bowlSeq, 'payload', { minutes: 60 }),
  'the bowl is of another line': (log, { bowlSeq }) => {
    const isPowder = /powder/iu.test(at<'BOWL_WEIGHED'>(log, bowlSeq).payload.line);
    return edit(log, bowlSeq, 'payload', { line: isPowder ? cream : powder });
  },
  'the bowl is of another ratio': (log, { bowlSeq }) => edit(log, bowlSeq, 'payload', { ratio: 1 }),
  'the bowl is hotter': (log, { bowlSeq }) => edit(log, bowlSeq, 'payload', { heat: 'dryHeat' }),
  'the bowl is for roots': (log, { bowlSeq }) =>
    edit(edit(log, bowlSeq, 'payload', { zone: 'roots' }), bowlSeq, 'tokens', { zone: 'roots' }),
  'the strand was weaker, its tokens too': (log, { startSeq }) => {
    const { payload } = at<'STRAND_STARTED'>(log, startSeq);
    const weaker = { ...payload, developerPercent: 1 };
    return edit(edit(log, startSeq, 'payload', weaker), startSeq, 'tokens', { mix: formMixKey(weaker) });
  },
  'the skin test was not read': (log, { bowlSeq }) => {
    const noteSeq = log.slice(0, bowlSeq).findLastIndex(({ type }) => type === 'SKIN_TEST_NOTED');
    const isNeeded = noteSeq >= 0 && log[noteSeq]?.tokens.skinTest === 'clear';
    return isNeeded ? edit(log, noteSeq, 'payload', { seen: 'notReadYet' }) : null;
  },
  'she told of a swelling': (log, { bowlSeq }) => {
    const isClient = ({ type, payload }: Log[number]) =>
      type === 'ANSWERED' && 'step' in payload && payload.step === 'client';
    const seq = log.slice(0, bowlSeq).findLastIndex(isClient);
    const { answers } = at<'ANSWERED'>(log, seq).payload;
    return edit(log, seq, 'payload', { answers: { ...answers, reactions: ['swelling'] } });
  },
  'the strand came off as soon as it was on': (log, { startSeq, outcomeSeq }) => {
    const { zone } = at<'STRAND_STARTED'>(log, startSeq).payload;
    const offSeq = log.findIndex(
      (event, seq) =>
        seq > startSeq &&
        seq < outcomeSeq &&
        event.type === 'STRAND_TAKEN_OFF' &&
        event.payload.zone === zone,
    );
    const startAtMs = log[startSeq]?.atMs ?? 0;
    return offSeq !== startSeq + 1
      ? null
      : log.map((event, seq) => (seq === offSeq ? { ...event, atMs: startAtMs } : event));
  },
  'the strand was put aside and recorded all the same': (log, { startSeq, outcomeSeq }) =>
    log.map((event, seq) =>
      seq > startSeq && seq < outcomeSeq && event.type === 'STRAND_TAKEN_OFF'
        ? ({ ...event, type: 'STRAND_DISCARDED' } as unknown as typeof event)
        : event,
    ),
  'the bowl is of a newer version': (log, { bowlSeq }) =>
    log.map((event, seq) => (seq === bowlSeq ? ({ ...event, v: 2 } as unknown as typeof event) : event)),
  'the bowl was judged by a newer model': (log, { bowlSeq }) =>
    log.map((event, seq) => (seq === bowlSeq ? { ...event, modelVersion: 99 } : event)),
  'the bowl was weighed before everything': (log, { bowlSeq }) =>
    log.map((event, seq) => (seq === bowlSeq ? { ...event, atMs: 0 } : event)),
};

/** Another word than the one that stands there, of its kind. */
const other = (value: unknown): unknown => {
  if (typeof value === 'boolean') return !value;
  if (typeof value === 'number') return value + 1;
  if (Array.isArray(value)) return value.length > 0 ? [] : ['roots'];
  const words = [
    'lengths',
    'ends',
    'clear',
    'waiting',
    'sound',
    'rough',
    'client',
    'hotTools',
    'strand',
    'head',
  ];
  const index = words.indexOf(String(value));
  return index === -1 ? 'asPlanned' : words[index % 2 === 0 ? index + 1 : index - 1];
};

/** Every token of every event, changed for itself. */
export function* forgeTokens(log: Log): Generator<{ readonly what: string; readonly forged: Log }> {
  for (const [seq, { type, tokens }] of log.entries()) {
    for (const [name, value] of Object.entries(tokens)) {
      const changed = other(value);
      if (changed === value) continue;
      yield { what: `${seq} ${type}.${name}`, forged: edit(log, seq, 'tokens', { [name]: changed }) };
    }
  }
}
