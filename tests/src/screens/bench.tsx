import { render, screen } from '@solidjs/testing-library';
import { type Component, createSignal } from 'solid-js';
import { Dynamic } from 'solid-js/web';
import { onTestFinished } from 'vitest';
import { advance } from '../../../machines/consultation/consultation';
import { classify } from '../../../shared/records/classify';
import type { BackStep } from '../../../shared/records/steps';
import type { Zone } from '../../../shared/records/zones';
import { accept, refuse } from '../../../shared/result';
import { dropDrafts } from '../../../src/screens/keptDraft';
import { createRinseSteps } from '../../../src/screens/reaction/rinseSteps';
import type { StepProps, Submit, SubmitAll } from '../../../src/screens/stepProps';
import { createBreaking } from '../../../src/screens/strandTest/breaking';
import { type Played, settings } from './playStory';

/** A screen over a consultation that the real judge and the real chart move on; only the store is left out. */
export function layOnBench(component: Component<StepProps>, played: Played, by = 'Opal') {
  const [consultation, setConsultation] = createSignal(played.consultation);
  const [nowMs, setNowMs] = createSignal(played.atMs);
  const [shown, setShown] = createSignal(component);
  let moreAsked = 0;
  const submit: Submit = async (raw, name = by) => {
    const context = { settings, settingsId: 0, by: name, atMs: nowMs(), inheritsStop: false };
    const event = classify(consultation().record, raw, context);
    if (!event.ok) return event;
    const next = advance(consultation(), event.value);
    if (!next.ok) return refuse({ kind: 'notNow' });
    setConsultation(next.value);
    return accept(undefined);
  };
  const submitAll: SubmitAll = async (raws) => {
    for (const raw of raws) {
      const taken = await submit(raw);
      if (!taken.ok) return taken;
    }
    return accept(undefined);
  };
  const page = {
    kicker: '',
    isOnSkin: false,
    onReaction: () => undefined,
    onMore: () => {
      moreAsked += 1;
    },
    onBar: () => undefined,
    onBackTo: (step: BackStep) => void submit({ type: 'REOPENED', answers: { step } }),
  };
  const { unmount } = render(() => {
    const rinseSteps = createRinseSteps({
      get consultation() {
        return consultation();
      },
      submit,
    });
    const breaking = createBreaking({
      get consultation() {
        return consultation();
      },
      submit,
    });
    return (
      <Dynamic
        component={shown()}
        consultation={consultation()}
        settings={settings}
        nowMs={nowMs()}
        by={by}
        page={{ ...page, breaking: breaking.strands(), notBroken: breaking.refusal() }}
        submit={submit}
        submitAll={submitAll}
        rinseSteps={rinseSteps}
        finishClosing={async () => accept(undefined)}
      />
    );
  });
  onTestFinished(() => {
    unmount();
    dropDrafts(played.consultation.id);
  });
  return {
    unmount,
    consultation,
    submit,
    show: (next: Component<StepProps>) => setShown(() => next),
    pass: (ms: number) => setNowMs((now) => now + ms),
    way: () => JSON.stringify(consultation().state.value),
    countMore: () => moreAsked,
    last: () => consultation().log.at(-1),
  };
}

/** Lets what was submitted come back. */
export const settle = async (): Promise<void> => {
  for (let turn = 0; turn < 5; turn += 1) await Promise.resolve();
};

const find = (selector: string): HTMLElement => {
  const found = document.querySelector<HTMLElement>(selector);
  if (found === null) throw new Error(`nothing on the screen is ${selector}`);
  return found;
};

const look = (selector: string): HTMLElement | null => document.querySelector<HTMLElement>(selector);

/** The question as it stands on the screen; one that is not on its sheet now is brought there by its line. */
function bring(question: string): string {
  const selector = `[data-question="${question}"]`;
  if (look(selector) === null && look('.sheet') !== null) {
    look('[data-act="all-questions"]')?.click();
    look(`[data-ledger="${question}"]`)?.click();
  }
  return selector;
}

/** Its field, with the pad brought out where the figure is offered as tiles. */
function findInput(question: string): HTMLInputElement {
  const selector = bring(question);
  if (look(`${selector} :is(input, textarea)`) === null)
    look(`${selector} [data-act="another-number"]`)?.click();
  return find(`${selector} :is(input, textarea)`) as HTMLInputElement;
}

export const act = (name: string): HTMLElement => find(`[data-act="${name}"]`);
export const hasAct = (name: string): boolean => document.querySelector(`[data-act="${name}"]`) !== null;

/** Presses a button, and waits until it is taken or refused. */
export async function press(name: string): Promise<void> {
  act(name).click();
  await settle();
}

/** The other way to hold: a short press, then the button that appears. */
export async function pressTwice(name: string): Promise<void> {
  await press(name);
  await press(`${name}-confirm`);
}

/** Of this zone's strand it is held that it breaks: a short tap, and then the second button. */
export async function holdBreaking(zone: Zone): Promise<void> {
  find(`[data-act="strand-broke"][data-option="${zone}"]`).click();
  await settle();
  find(`.hold:has([data-option="${zone}"]) [data-act="strand-broke-confirm"]`).click();
  await settle();
}

export async function choose(question: string, option: string): Promise<void> {
  const selector = bring(question);
  if (look(`${selector} [data-option="${option}"]`) === null) {
    look(`${selector} [data-act="back-to-picks"]`)?.click();
  }
  find(`${selector} [data-option="${option}"]`).click();
  await settle();
}

/** Which options of a question stand chosen? */
export const pressed = (question: string): readonly (string | undefined)[] =>
  [...document.querySelectorAll<HTMLElement>(`${bring(question)} [data-option][aria-pressed="true"]`)].map(
    ({ dataset }) => dataset.option,
  );

export async function type(question: string, text: string): Promise<void> {
  const input = findInput(question);
  input.value = text;
  input.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await settle();
}

export const typed = (question: string): string => findInput(question).value;

/** What is said at a field. */
export const said = (question: string): string => find(`${bring(question)} .field-refusal`).textContent ?? '';

export const seen = (selector: string): string =>
  document.querySelector(selector)?.textContent?.replaceAll('\u00a0', ' ') ?? '';

export const title = (): string => screen.getByRole('heading', { level: 1 }).textContent ?? '';
