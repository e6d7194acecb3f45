import { judgeKill, type Kill } from './judge';
import { leave, type ReadBack, readAnswer, type Shown, type Told, visit } from './readBack';
import { nameConsultation, type Place } from './salonDay';
import { answeredQuestions } from './scenes';
import type { Tally } from './tally';
import type { StationWindow } from './window';

/** Judges a kill, looks at the screens of those it concerns, and writes both down. */
export async function examine(
  kill: Kill,
  after: ReadBack,
  { page }: StationWindow,
  tally: Tally,
): Promise<void> {
  const verdict = judgeKill(kill, after);
  const base = kill.before.told.get(nameConsultation(kill.place))?.log.length ?? 0;
  tally.standing += base;
  tally.acknowledged += kill.acknowledged - base;
  tally.found += Math.max(0, verdict.found - base);
  tally.inFlight += base + kill.taps.length - kill.acknowledged;
  tally.lost += verdict.lost;
  tally.between += verdict.wasBetween ? 1 : 0;
  tally.indexLostByBrowser += verdict.isIndexLost ? 1 : 0;
  const faults = [...verdict.faults];
  for (const place of new Set<Place>([kill.place, 'strands', 'head'])) {
    const told = after.told.get(nameConsultation(place));
    if (told === undefined || told.isClosed) continue;
    faults.push(...compareScreen(place, told, await visit(page, place)));
    await leave(page);
  }
  const which = `kill ${tally.kills} (${kill.harm}, ${tally.delaysMs.at(-1)} ms)`;
  tally.faults.push(...faults.map((fault) => `${which}: ${fault}`));
}

/** Does her screen show what the day's records tell of her? */
function compareScreen(place: Place, { log, record }: Told, shown: Shown): readonly string[] {
  const faults: string[] = [];
  if (shown.length !== log.length) faults.push(`${place} shows ${shown.length} of ${log.length} entries`);
  const answered = log.findLast(({ type }) => type === 'ANSWERED');
  const questions = place === 'client' || place === 'feelHair' ? answeredQuestions[place] : [];
  for (const question of questions) {
    const kept = answered === undefined ? undefined : readAnswer(answered, question);
    const pressed = shown.pressed[question];
    if (pressed !== kept) faults.push(`${place}: ${question} shows ${pressed}, kept is ${kept}`);
  }
  const running = record.clocks.filter(({ endedAtMs }) => endedAtMs === null);
  const isTiming = shown.step === 'processing' || shown.step === 'colourOn';
  for (const { id, dueAtMs } of isTiming ? running : []) {
    const due = shown.dueAtMs[id];
    if (due !== dueAtMs) faults.push(`${place} shows clock ${id} due at ${due}, not ${dueAtMs}`);
  }
  return faults;
}
