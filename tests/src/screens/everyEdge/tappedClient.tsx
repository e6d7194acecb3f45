import { render } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { advance, type ConsultationState } from '../../../../machines/consultation/consultation';
import { classify, type RawEvent } from '../../../../shared/records/classify';
import type { ConsultationEvent } from '../../../../shared/records/event';
import { accept, type Result, refuse } from '../../../../shared/result';
import { ConsultationScreen } from '../../../../src/screens/consultation/ConsultationScreen';
import type { SubmitRefusal } from '../../../../src/station/submitRefusal';
import { settle } from '../bench';
import { type Played, settings } from '../playStory';

/** One event that taps on the screen led to: from which state, on which screen, by which taps. */
export interface Tapped {
  readonly from: ConsultationState;
  readonly event: ConsultationEvent;
  readonly screen: string;
  readonly taps: readonly string[];
}

const nameTap = (target: Element): string | null => {
  const found = target.closest<HTMLElement>('[data-act], [data-option], [data-ledger]');
  if (found === null) return null;
  const { act, option, ledger } = found.dataset;
  return act === 'absolute' ? (option ?? act) : (act ?? option ?? ledger ?? null);
};

/** Hears every tap: which, and on which screen the first of them fell. */
export function hearTaps() {
  let taps: string[] = [];
  let screen = '';
  const listen = ({ target }: Event): void => {
    if (!(target instanceof Element)) return;
    if (taps.length === 0) screen = document.querySelector('main')?.dataset.step ?? 'bar';
    const name = nameTap(target);
    if (name !== null) taps.push(name);
  };
  document.addEventListener('click', listen, true);
  return {
    taps: (): readonly string[] => taps,
    screen: () => screen,
    begin: () => {
      taps = [];
    },
    stop: () => document.removeEventListener('click', listen, true),
  };
}

/** The whole screen of one client, moved on by the real judge and the real chart; what is tapped is written down. */
export function seatTapped(played: Played) {
  const [consultation, setConsultation] = createSignal(played.consultation);
  const [nowMs, setNowMs] = createSignal(played.atMs + 1_000);
  const tapped: Tapped[] = [];
  const heard = hearTaps();
  const submit = async (raw: RawEvent, by = 'Opal'): Promise<Result<void, SubmitRefusal>> => {
    const context = { settings, settingsId: 0, by, atMs: nowMs(), inheritsStop: false };
    const before = consultation();
    const event = classify(before.record, raw, context);
    if (!event.ok) return event;
    const next = advance(before, event.value);
    if (!next.ok) return refuse({ kind: 'notNow' });
    tapped.push({ from: before.state, event: event.value, screen: heard.screen(), taps: heard.taps() });
    heard.begin();
    setConsultation(next.value);
    return accept(undefined);
  };
  const { unmount } = render(() => (
    <ConsultationScreen
      consultation={consultation()}
      settings={settings}
      nowMs={nowMs()}
      by="Opal"
      isWriter
      submit={submit}
      submitAll={async (raws) => {
        for (const raw of raws) {
          const taken = await submit(raw);
          if (!taken.ok) return taken;
        }
        return accept(undefined);
      }}
      finishClosing={async () => accept(undefined)}
      onWho={() => undefined}
      closed={[]}
      onBar={() => undefined}
    />
  ));
  return {
    tapped,
    close: () => {
      heard.stop();
      unmount();
    },
    pass: async (ms: number) => {
      setNowMs((now) => now + ms);
      await settle();
    },
  };
}

export type TappedClient = ReturnType<typeof seatTapped>;
