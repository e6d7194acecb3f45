import { type Accessor, createEffect, createMemo, createSignal } from 'solid-js';
import { ASSUMED_SILENT_OVER_MS, findCallKind } from '../../../shared/records/call';
import type { StationInUse } from '../../station/createStation';
import type { TabletInUse } from '../../tablet/createTablet';
import { listBoiled } from '../practice/bench/viewBench';
import type { SubmitFor } from '../submitting';
import { listUnheard, nameCall, nameClock, type UnheardCall } from './listCalls';

/** By which name is a trial known beside the clocks of clients? */
const nameTrial = (id: string): string => `bench/${id}`;

export interface Alarm {
  /** This tablet calls somebody, heard or not. */
  readonly isCalling: Accessor<boolean>;
  /** One tap: quiet, and in the log; the clocks stay as they are. */
  readonly silence: () => void;
  /** Somebody went to her: what called for her is heard. */
  readonly goTo: (id: string) => void;
}

/**
 * What calls somebody now, on any view. Only the window that writes calls, since it alone can write down that it was
 * heard, and one tablet should not call twice; a station that cannot write calls all the same, and remembers by itself.
 * Checked in tests/src/screens/alarm.test.tsx.
 */
export function createAlarm(
  station: Pick<StationInUse, 'state' | 'nowMs'>,
  tablet: TabletInUse | undefined,
  submit: SubmitFor,
  /** What is spoken for a call; null where nothing is. */
  sayCall: (call: UnheardCall) => string | null = () => null,
): Alarm {
  const [silenced, setSilenced] = createSignal<ReadonlyMap<string, number>>(new Map());
  // A clock that was set back since would find everything heard until it is as late again.
  createEffect(() => {
    const nowMs = station.nowMs();
    setSilenced((before) => {
      const past = [...before].filter(([, atMs]) => atMs <= nowMs);
      return past.length === before.size ? before : new Map(past);
    });
  });
  const mayCall = () => ['writing', 'noStore'].includes(station.state().mode);
  const unheard = createMemo(() =>
    mayCall() ? listUnheard([...station.state().open.values()], silenced(), station.nowMs()) : [],
  );
  /** What lies in boiling water past its time; quiet for as long after each silencing as a clock that is over. */
  const boiled = createMemo(
    () =>
      mayCall()
        ? listBoiled(station.state().bench, station.nowMs())
            .map(nameTrial)
            .filter((name) => {
              const heardAtMs = silenced().get(name) ?? Number.NEGATIVE_INFINITY;
              return station.nowMs() >= heardAtMs + ASSUMED_SILENT_OVER_MS;
            })
        : [],
    [],
    { equals: (one, other) => one.join() === other.join() },
  );
  const isCalling = createMemo(() => unheard().length > 0 || boiled().length > 0);
  createEffect(() =>
    tablet?.call([
      ...unheard().map((call) => ({ key: nameCall(call), kind: findCallKind(call), line: sayCall(call) })),
      // The softest: nobody's hair is in it.
      ...boiled().map((key) => ({ key, kind: 'look' as const, line: null })),
    ]),
  );

  const hear = (calls: readonly UnheardCall[]): void => {
    if (calls.length === 0) return;
    const nowMs = station.nowMs();
    setSilenced((before) => {
      const after = new Map(before);
      for (const { consultation, clock } of calls) after.set(nameClock(consultation, clock.id), nowMs);
      return after;
    });
    if (station.state().mode !== 'writing') return;
    for (const { consultation, clock } of calls) {
      void submit(consultation.id, { type: 'ALARM_ACKNOWLEDGED', answers: { clock: clock.id } });
    }
  };

  return {
    isCalling,
    silence: () => {
      const nowMs = station.nowMs();
      const names = boiled();
      if (names.length > 0)
        setSilenced((before) => new Map([...before, ...names.map((name) => [name, nowMs] as const)]));
      hear(unheard());
    },
    goTo: (id) => hear(unheard().filter(({ consultation }) => consultation.id === id)),
  };
}
