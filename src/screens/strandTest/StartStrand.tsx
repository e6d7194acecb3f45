import { createMemo, createSignal, Show } from 'solid-js';
import { mixQuestions, strandForm } from '../../../shared/records/forms/test';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { HandCaution } from '../../parts/HandCaution';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { findStuff } from '../findStuff';
import '../layout.css';
import { saySnipHint } from '../map/sayHair';
import { viewHair } from '../map/viewHair';
import { PartSheet } from '../PartSheet';
import { SentRefusal } from '../SentRefusal';
import type { StepProps } from '../stepProps';
import { RunningLine } from './RunningLine';
import { sayDraftMix } from './sayMix';
import { computeTestMix, draftStrand, findMixBefore, listLines } from './strandDraft';
import { TestGrams } from './TestGrams';

const { zone: _zone, place, buildUp, hairs, lookEveryMin, testG, makersLimitMin } = strandForm;
const { line, batch, developerPercent, ratio, heat, minutes } = mixQuestions;

/** Where it was snipped and whether build-up is off, then the mix; what is right for most stands behind it. */
const form = {
  place,
  buildUp,
  line,
  developerPercent,
  minutes,
  makersLimitMin,
  ratio,
  heat,
  batch,
  lookEveryMin: { ...lookEveryMin, more: true },
  hairs: { ...hairs, more: true },
  testG,
} as const;

const mixNames = [...Object.keys(mixQuestions), 'makersLimitMin'];

/** Offered in one tap. common practice, no source: what stands in most directions. */
const minutePicks = {
  minutes: ['20', '25', '30', '35', '45'],
  makersLimitMin: ['30', '35', '45', '50', '60'],
};

/** Few grams, tapped. common practice, no source: what a strand of thirty hairs takes, and a little more. */
const testPicks = { g: ['4', '6', '8', '10'], oz: ['0.14', '0.21', '0.28', '0.35'] } as const;

/** A strand of this zone: where it was snipped, the mix as planned, and the grams of it beside the button. */
export function StartStrand(props: StepProps & { readonly zone: Zone; readonly onClose: () => void }) {
  const words = useWords();
  const said = () => words.strandTest.start;
  const { record } = props.consultation;
  const before = findMixBefore(record, props.settings, props.zone);
  const [isSame, setIsSame] = createSignal(before !== null);
  const name = `${props.consultation.id}/strand/${props.zone}/${record.strands.length}`;
  const asked = createEventForm(props, form, name, draftStrand(record, props.settings, props.zone));
  const grams = createMemo(() =>
    computeTestMix(props.consultation.record, props.settings, asked.draft.raw(), props.zone, props.nowMs),
  );
  /** Where the map says so is told at the question. */
  const asks = createMemo(() => {
    const { strand } = words.strandTest.forms;
    const { answers } = props.consultation.record;
    const snip = viewHair(answers, props.settings).snips.find(({ zone }) => zone === props.zone);
    return snip === undefined
      ? strand
      : { ...strand, place: { ...strand.place, hint: saySnipHint(snip, words, props.settings.units) } };
  });
  const lineSoFar = () => {
    const { line: chosen } = asked.draft.raw();
    return typeof chosen === 'string' ? chosen : '';
  };
  /** Gloves at the snip; what the mix asks for once it is known. */
  const caution = () => {
    if (asked.draft.raw().buildUp === undefined || lineSoFar() === '') return 'snip';
    const stuff = findStuff(props.settings, props.consultation.record.answers, lineSoFar());
    return stuff === 'lightener' ? 'weighLightener' : 'weighColour';
  };
  /** The mix of before is given up as a whole; its questions are asked. */
  const changeMix = () => {
    for (const each of mixNames) asked.draft.set(each, undefined);
    setIsSame(false);
  };
  const begin = async () => {
    if (await asked.send('STRAND_STARTED', { zone: props.zone })) props.onClose();
  };
  return (
    <StepPage
      page={props.page}
      title={said().title(words.general.zones[props.zone])}
      actions={
        <>
          <TestGrams grams={grams()} answers={record.answers} line={lineSoFar()} settings={props.settings} />
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <BigButton kind="primary" act="start-strand" onPress={() => void begin()}>
            {said().begin}
          </BigButton>
        </>
      }
    >
      <RunningLine {...props} not={props.zone} />
      <Show when={isSame() && before}>
        {(mix) => (
          <p class="mix-line" data-panel="same-mix">
            <strong>{said().sameMix[mix().from]}</strong>{' '}
            <span>{sayDraftMix(asked.draft.raw(), words, props.settings, props.nowMs)}</span>
          </p>
        )}
      </Show>
      <PartSheet
        step={props}
        form={asked}
        questions={form}
        words={asks()}
        picks={{
          ...minutePicks,
          testG: testPicks[props.settings.units.mass],
          line: listLines(props.consultation.record, props.settings),
        }}
        summary={said().summary}
      >
        <p class="big-word">{said().ready}</p>
        <p class="lead" data-line="mix">
          {sayDraftMix(asked.draft.raw(), words, props.settings, props.nowMs)}
        </p>
        <Show when={isSame()}>
          <BigButton kind="quiet" act="another-mix" onPress={changeMix}>
            {said().anotherMix}
          </BigButton>
        </Show>
      </PartSheet>
      <HandCaution caution={caution()} />
      <SentRefusal refusal={asked.refusal()} />
    </StepPage>
  );
}
