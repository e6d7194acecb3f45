import { createMemo, createSignal, untrack } from 'solid-js';
import type { Consultation } from '../../../machines/consultation/consultation';
import type { Form } from '../../../shared/records/form';
import { findAskForm } from '../../../shared/records/forms/askedHere';
import { type FieldRefusal, type RawForm, readForm } from '../../../shared/records/readForm';
import type { StrandRecord } from '../../../shared/records/record';
import type { AskStep } from '../../../shared/records/steps';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { listMistakes, takeReadable } from '../../parts/form/draft';
import type { Words } from '../../words/words';
import type { TapRefusal } from '../explainRefusal';
import { createKeptDraft } from '../keptDraft';
import { listFalling } from '../leaving/whatFalls';
import { showFirstRefused } from '../showFirstRefused';
import type { StepProps } from '../stepProps';
import { listAsLastTime } from './asLastTime';
import { makeReading, writeKept } from './readContext';

/**
 * The asking of one step: a draft that begins with what is kept, and is kept again tap by tap.
 * What does not read stays in its field and out of the log; Next goes on only when nothing is missing or wrong.
 * Checked in tests/src/screens/askStep.test.tsx.
 */
export function createAsking(step: AskStep, props: StepProps) {
  const form: Form = findAskForm(
    step,
    untrack(() => props.settings.profile),
  );
  const kept = (): RawForm => {
    const { answers, lastTime } = props.consultation.record;
    const nowMs = untrack(() => props.nowMs);
    return writeKept(form, answers[step] ?? listAsLastTime(lastTime, step, nowMs), props.settings);
  };
  /** A correction or another day takes answers back: then nothing that was typed before comes up again. */
  const draft = untrack(() =>
    createKeptDraft(
      [props.consultation.id, step, countTakenBack(props.consultation)].join('/'),
      kept(),
      props.settings,
    ),
  );
  const [isNextTried, setIsNextTried] = createSignal(false);
  const [refusal, setRefusal] = createSignal<TapRefusal | null>(null);
  const readNow = () =>
    makeReading(
      props.settings,
      untrack(() => props.nowMs),
    );
  let sent = untrack(() => writeAnswers(kept()));

  const listUnread = (): readonly FieldRefusal[] => {
    if (!isNextTried()) return listMistakes(form, draft.raw(), readNow());
    const read = readForm(form, draft.raw(), readNow());
    return read.ok ? [] : read.error;
  };
  /** What each field alone could not tell: two answers that do not go together are said at one of them. */
  const listConflicts = (): readonly FieldRefusal[] => {
    const said = refusal();
    return said?.kind === 'fields' ? said.fields : [];
  };
  const refusals = createMemo<readonly FieldRefusal[]>(() => {
    const unread = listUnread();
    return [...unread, ...listConflicts().filter(({ path }) => unread.every((each) => each.path !== path))];
  });

  function writeAnswers(raw: RawForm): string {
    const read = readForm(form, raw, { ...readNow(), isPartial: true });
    return JSON.stringify(read.ok ? read.value : null);
  }

  /** Which strands hang on what is about to be changed? Asked once a visit of the step. */
  const [falling, setFalling] = createSignal<readonly StrandRecord[]>([]);
  let isToldOfFall = false;
  function listFallingBy(answers: RawForm): readonly StrandRecord[] {
    const read = readForm(form, answers, { ...readNow(), isPartial: true });
    return read.ok ? listFalling(props.consultation.record, step, read.value) : [];
  }
  const change = (): void => {
    isToldOfFall = true;
    setFalling([]);
    void keep();
  };
  /** Also what a dialog says when it is closed, by whichever button: then nothing is asked any more. */
  const leaveAsItWas = (): void => {
    if (falling().length === 0) return;
    setFalling([]);
    draft.begin(kept());
  };

  /** Keeps what reads well, once for each change. */
  async function keep(): Promise<boolean> {
    const answers = takeReadable(form, draft.raw(), kept(), readNow());
    const falls = isToldOfFall ? [] : listFallingBy(answers);
    setFalling(falls);
    if (falls.length > 0) return false;
    const written = writeAnswers(answers);
    if (written === sent && props.consultation.record.answers[step] !== undefined) return true;
    sent = written;
    const taken = await props.submit({ type: 'ANSWERED', step, answers });
    setRefusal(taken.ok ? null : taken.error);
    if (!taken.ok) sent = '';
    if (taken.ok && listMistakes(form, draft.raw(), readNow()).length === 0) draft.drop();
    return taken.ok;
  }

  async function goOn(): Promise<void> {
    setIsNextTried(true);
    if (refusals().length > 0) {
      showFirstRefused();
      return;
    }
    if (!(await keep())) return;
    const taken = await props.submit({ type: 'STEP_CONFIRMED', answers: { step } });
    setRefusal(taken.ok ? null : taken.error);
  }

  /** How many answers are still missing or wrong, once Next was tried. */
  const saysMissing = (words: Words, units: UnitSettings): string => {
    const count = isNextTried() ? refusals().length : 0;
    return count === 0 ? '' : words.asking.missing(formatQuantity(count, 'count', units, words.locale));
  };

  /** Nothing is missing and nothing is wrong: Next is what there is to do. */
  const isComplete = createMemo(
    () => listConflicts().length === 0 && readForm(form, draft.raw(), readNow()).ok,
  );

  return {
    falling,
    change,
    leaveAsItWas,
    saysMissing,
    isComplete,
    form,
    draft,
    refusals,
    refusal,
    keep: () => void keep(),
    goOn: () => void goOn(),
  };
}

export type Asking = ReturnType<typeof createAsking>;

const countTakenBack = ({ log }: Consultation): number =>
  log.filter(({ type, tokens }) => type === 'CORRECTED' || type === 'RESUMED' || tokens.isAnotherDay).length;
