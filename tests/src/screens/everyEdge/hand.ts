import { choose, hasAct, press, pressTwice, settle, type } from '../bench';

/** Several buttons, one after the other. */
export async function pressAll(...acts: readonly string[]): Promise<void> {
  for (const each of acts) await press(each);
}

/** Several questions, an option each. */
export async function tell(...given: readonly (readonly [string, string])[]): Promise<void> {
  for (const [question, option] of given) await choose(question, option);
}

/** What stops for good is held: here the other way to hold, by a second press. */
export async function holdOption(question: string, option: string): Promise<void> {
  await choose(question, option);
  const second = document.querySelector<HTMLElement>('.hold-confirm');
  if (second === null) throw new Error(`${option} is not held`);
  second.click();
  await settle();
}

/** Back along the rail, past the question what that costs. */
export async function goBack(step: string): Promise<void> {
  await press(`rail-to-${step}`);
  if (hasAct('go-back')) await press('go-back');
}

/** She tells of it only now: from every step, under more for this client. */
export async function tellsOf(reaction: string): Promise<void> {
  await pressAll('more-for-client', 'way-tells');
  await pressTwice(`tells-${reaction}`);
}

export async function end(kind: string): Promise<void> {
  await pressAll('more-for-client', 'way-end');
  await choose('reason', 'hairTooWeak');
  await pressTwice(kind);
}

export async function sayGlassReacted(): Promise<void> {
  await pressAll('more-for-client', 'way-glass');
  await pressTwice('glass-reacted');
}

/** A coded reason and a person's own words. */
export async function sign(code: string): Promise<void> {
  await choose('code', code);
  await type('words', 'We looked together.');
}

export async function fillStrand(): Promise<void> {
  await tell(['place', 'whereIroned'], ['buildUp', 'washedOff']);
  if (document.querySelector('[data-panel="same-mix"]') === null) {
    await tell(['line', 'Sandbar powder'], ['developerPercent', '6'], ['ratio', '2']);
    await type('minutes', '25');
    await choose('makersLimitMin', '45');
  }
  await press('start-strand');
}

export async function fillToner(): Promise<void> {
  await tell(['line', 'Sandbar cream'], ['developerPercent', '1.5'], ['minutes', '10'], ['ratio', '2']);
  await press('weigh-toner');
}

export async function sayOutcome(): Promise<void> {
  await tell(
    ['fibre', 'sound'],
    ['stretch', 'springsBack'],
    ['wentPast30', 'no'],
    ['level', '7'],
    ['evenness', 'even'],
  );
  await press('record-outcome');
}

export async function putAside(): Promise<void> {
  await press('discard-strand');
  await choose('why', 'lost');
  await press('discard');
}

export async function decide(decision: string): Promise<void> {
  const tile = `[data-question="decision"] [data-option="${decision}"]`;
  if (document.querySelector(tile) === null) await press('show-freer');
  await choose('decision', decision);
  await press(`decide-${decision}`);
}

export async function correct(answer?: string): Promise<void> {
  await press('correction');
  if (answer !== undefined) await choose('answer', answer);
  await sign('misheard');
  await pressTwice('correct');
}
