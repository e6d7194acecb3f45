import { Show } from 'solid-js';
import type { PulledStrand } from '../../../shared/hair/pull';
import type { Form } from '../../../shared/records/form';
import { outcomeForm } from '../../../shared/records/forms/test';
import { findSigns, gradeOutcome } from '../../../shared/records/gradeOutcome';
import { readForm } from '../../../shared/records/readForm';
import type { StrandRecord } from '../../../shared/records/record';
import { formatQuantity } from '../../../shared/units/format';
import { readNumber } from '../../../shared/units/numberField';
import { BigButton } from '../../parts/BigButton';
import { HandCaution } from '../../parts/HandCaution';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import '../layout.css';
import { PartSheet } from '../PartSheet';
import { fillOutcome } from '../ruler/fills';
import { MeasureStretch } from '../ruler/MeasureStretch';
import { SentRefusal } from '../SentRefusal';
import type { StepProps } from '../stepProps';
import { BrokenOutcome } from './BrokenOutcome';
import { Heed } from './Heed';
import { listLevelPicks } from './levelPicks';
import { brokenAnswers } from './outcomeOfBroken';
import { RunningLine } from './RunningLine';
import { SkinTestLine } from './SkinTestLine';
import { sayBesideLast, sayBesideWanted } from './sayLevelHeard';
import { sayShortTime } from './sayShortTime';

const { zone: _zone, fibre, stretch, level, wentPast30, evenness } = outcomeForm;
const form = { fibre, stretch, wentPast30, level, evenness } as const satisfies Form;
/** Hair that broke is not pulled any more. */
const ofBroken = { fibre } as const satisfies Form;

type OutcomeProps = StepProps & {
  readonly strand: StrandRecord;
  readonly others: number;
  /** Absent where a strand may not be put aside. */
  readonly onDiscard?: () => void;
  /** Absent where nothing else is to be done first. */
  readonly onClose?: () => void;
};

/** What one strand said when it was off: of one that broke in the mix that is said already. */
export function OneOutcome(props: OutcomeProps) {
  return (
    <Show when={props.strand.ended?.how === 'broke'} fallback={<FeltOutcome {...props} />}>
      <BrokenOutcome {...props} />
    </Show>
  );
}

/** Fibre, stretch, level, evenness. */
function FeltOutcome(props: OutcomeProps) {
  const words = useWords();
  const said = () => words.strandTest.takenOff;
  const { strand } = props;
  const write = (value: number) => formatQuantity(value, 'count', props.settings.units, words.locale);
  const asked = createEventForm(props, form, `${props.consultation.id}/outcome/${strand.number}`, {});
  const isBroken = () => asked.draft.raw().fibre === 'broken';
  const record = async () => {
    if (isBroken()) {
      for (const [name, option] of Object.entries(brokenAnswers)) asked.draft.set(name, option);
    }
    if (await asked.send('OUTCOME_RECORDED', { zone: strand.zone })) props.onClose?.();
  };
  const asks = () => words.strandTest.forms.outcome;
  const sayShort = () => sayShortTime(strand, props.consultation.record, words, props.settings.units);
  /** What the level just tapped comes to, said beside it and until it is recorded; nothing of a fibre that shows none. */
  const sayLevel = () => {
    const { level: told } = asked.draft.raw();
    const read = readNumber(typeof told === 'string' ? told : '', level.field, props.settings.units);
    if (!read.ok || isBroken()) return '';
    const { record: all } = props.consultation;
    return [
      sayBesideLast(read.value, all, strand.zone, words, props.settings.units),
      sayBesideWanted(read.value, all, words, props.settings.units),
    ]
      .filter((each) => each !== '')
      .join(' ');
  };
  /** What all of it comes to: said before it is recorded where that is worse than the fibre that was tapped. */
  const sayAllSaid = () => {
    const read = readForm(
      form,
      { ...asked.draft.raw(), ...(isBroken() ? brokenAnswers : {}) },
      {
        units: props.settings.units,
        hasAgeLine: false,
        nowMs: props.nowMs,
      },
    );
    const grade = read.ok ? gradeOutcome(read.value, findSigns(strand)) : null;
    return grade === null || grade === asked.draft.raw().fibre
      ? said().allSaid
      : said().countsAs(words.strandTest.grades[grade]);
  };
  const sayFill = (pulled: PulledStrand) => {
    const { stretch, wentPast30 } = fillOutcome(pulled);
    const past = wentPast30 === undefined ? [] : [words.ruler.pastIs(asks().wentPast30.options[wentPast30])];
    return [asks().stretch.options[stretch], ...past].join(' · ');
  };
  const fill = (pulled: PulledStrand) => {
    for (const [name, option] of Object.entries(fillOutcome(pulled))) {
      asked.draft.set(name, option);
      asked.onChange(name, option);
    }
  };
  const renderCorner = (path: string) => (
    <Show when={path === 'stretch'}>
      <MeasureStretch units={props.settings.units} behind={props.page} sayFill={sayFill} onFill={fill} />
    </Show>
  );
  return (
    <StepPage
      page={props.page}
      title={said().title(words.general.zones[strand.zone])}
      also={[
        words.clock.strandName(write(strand.number), null),
        words.strandTest.processing.snippedAt(words.strandTest.forms.strand.place.options[strand.place]),
      ].join(' · ')}
      actions={
        <>
          <Heed line="level-heard" says={sayLevel()} />
          <Show when={props.others > 0 && sayLevel() === ''}>
            <p class="soft">{said().still(write(props.others))}</p>
          </Show>
          <Show when={props.onClose}>
            {(close) => (
              <BigButton act="cancel" onPress={close()}>
                {words.general.back}
              </BigButton>
            )}
          </Show>
          <Show when={props.onDiscard}>
            {(discard) => (
              <BigButton act="discard-strand" onPress={discard()}>
                {words.strandTest.processing.discard}
              </BigButton>
            )}
          </Show>
          <BigButton kind="primary" act="record-outcome" onPress={() => void record()}>
            {said().record}
          </BigButton>
        </>
      }
    >
      <RunningLine {...props} not={strand.zone} />
      <Heed line="short-time" says={sayShort()} />
      <PartSheet
        step={props}
        form={asked}
        questions={isBroken() ? ofBroken : form}
        words={asks()}
        picks={{ level: listLevelPicks(props.consultation.record, strand.zone) }}
        summary={said().summary}
        corner={renderCorner}
      >
        <p class="big-word">{sayAllSaid()}</p>
        <Show when={props.by !== ''}>
          <p class="lead">{said().signedAs(props.by)}</p>
        </Show>
      </PartSheet>
      <HandCaution caution="outcome" />
      <SkinTestLine {...props} />
      <SentRefusal refusal={asked.refusal()} />
    </StepPage>
  );
}
