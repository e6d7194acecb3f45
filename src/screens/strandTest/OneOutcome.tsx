import { Show } from 'solid-js';
import type { PulledStrand } from '../../../shared/hair/pull';
import type { Form } from '../../../shared/records/form';
import { outcomeForm } from '../../../shared/records/forms/test';
import { findSigns, gradeOutcome } from '../../../shared/records/gradeOutcome';
import { readForm } from '../../../shared/records/readForm';
import type { StrandRecord } from '../../../shared/records/record';
import { formatQuantity } from '../../../shared/units/format';
import { readNumber } from '../../../shared/units/numberField';
import { HandCaution } from '../../parts/HandCaution';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import '../layout.css';
import { PartSheet } from '../PartSheet';
import { StrandSeen } from '../practice/StrandSeen';
import { fillOutcome } from '../ruler/fills';
import { MeasureStretch } from '../ruler/MeasureStretch';
import type { StepProps } from '../stepProps';
import { BrokenOutcome } from './BrokenOutcome';
import { Heed } from './Heed';
import { listLevelPicks } from './levelPicks';
import { OutcomePage } from './OutcomePage';
import { sayBesideLast, sayBesideWanted } from './sayLevelHeard';
import { sayShortTime } from './sayShortTime';

const { zone: _zone, fibre, stretch, level, wentPast30, evenness } = outcomeForm;
const form = { fibre, stretch, wentPast30, level, evenness } as const satisfies Form;

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
      <BrokenOutcome {...props} onRecorded={props.onClose} />
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
    if (await asked.send('OUTCOME_RECORDED', { zone: strand.zone })) props.onClose?.();
  };
  const asks = () => words.strandTest.forms.outcome;
  const sayShort = () => sayShortTime(strand, props.consultation.record, words, props.settings.units);
  /** What the level just tapped comes to, said beside it and until it is recorded. */
  const sayLevel = () => {
    const { level: told } = asked.draft.raw();
    const read = readNumber(typeof told === 'string' ? told : '', level.field, props.settings.units);
    if (!read.ok) return '';
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
    const { units } = props.settings;
    const read = readForm(form, asked.draft.raw(), { units, hasAgeLine: false, nowMs: props.nowMs });
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
  /** Hair that broke is not pulled any more: it has its own page, and Back leads to what was felt. */
  const takeBack = () => {
    asked.draft.set('fibre', undefined);
    asked.onChange('fibre', undefined);
  };
  const leave = () => {
    asked.draft.drop();
    props.onClose?.();
  };
  const page = () => (
    <OutcomePage
      {...props}
      beside={
        <>
          <Heed line="level-heard" says={sayLevel()} />
          <Show when={props.others > 0 && sayLevel() === ''}>
            <p class="soft">{said().still(write(props.others))}</p>
          </Show>
        </>
      }
      record={said().record}
      onRecord={() => void record()}
      refusal={asked.refusal()}
    >
      <StrandSeen {...props} zone={strand.zone} isFelt />
      <Heed line="short-time" says={sayShort()} />
      <PartSheet
        step={props}
        form={asked}
        questions={form}
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
    </OutcomePage>
  );
  return (
    <Show when={isBroken()} fallback={page()}>
      <BrokenOutcome {...props} onClose={takeBack} onRecorded={leave} />
    </Show>
  );
}
