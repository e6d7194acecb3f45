import { createEffect, createMemo, createSignal, Show } from 'solid-js';
import { strandForm } from '../../../shared/records/forms/test';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import '../layout.css';
import { PartForm } from '../PartForm';
import type { StepProps } from '../stepProps';
import { SameMix } from './SameMix';
import { computeTestMix, draftStrand, listLines } from './strandDraft';
import './startStrand.css';
import { TestGrams } from './TestGrams';

const { zone: _zone, place, buildUp, hairs, lookEveryMin, testG, ...mix } = strandForm;
const { line, batch, developerPercent, ratio, heat, minutes, makersLimitMin } = mix;

/** Where it was snipped, and whether build-up is off; what is right for most stands behind "more". */
const where = { place, buildUp } as const;
const theMix = { line, batch, developerPercent, ratio, minutes, makersLimitMin, heat } as const;
const rest = {
  hairs: { ...hairs, more: true },
  lookEveryMin: { ...lookEveryMin, more: true },
  testG,
} as const;
const whole = { ...where, ...theMix, ...rest } as const;

/** Offered in one tap. common practice, no source: what stands in most directions. */
const minutePicks = {
  minutes: ['20', '25', '30', '35', '45'],
  makersLimitMin: ['30', '35', '45', '50', '60'],
};

/** A strand of this zone: where it was snipped, the mix as planned, and the grams of it beside the button. */
export function StartStrand(props: StepProps & { readonly zone: Zone; readonly onClose: () => void }) {
  const words = useWords();
  const said = () => words.strandTest.start;
  const { record } = props.consultation;
  const before = record.strands.at(-1);
  const [isSame, setIsSame] = createSignal(before !== undefined);
  const name = `${props.consultation.id}/strand/${props.zone}/${record.strands.length}`;
  const asked = createEventForm(props, whole, name, draftStrand(record, props.settings, props.zone));
  const grams = createMemo(() =>
    computeTestMix(props.consultation.record, props.settings, asked.draft.raw(), props.zone, props.nowMs),
  );
  const lineSoFar = () => {
    const line = asked.draft.raw().line;
    return typeof line === 'string' ? line : '';
  };
  /** What is refused in the mix of the strand before is shown, so that it can be changed. */
  createEffect(() => {
    if (asked.refusals().some(({ path }) => path in theMix)) setIsSame(false);
  });
  const begin = async () => {
    if (await asked.send('STRAND_STARTED', { zone: props.zone })) props.onClose();
  };
  return (
    <StepPage
      page={props.page}
      title={said().title(words.general.zones[props.zone])}
      actions={
        <>
          <TestGrams grams={grams()} line={lineSoFar()} settings={props.settings} />
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <BigButton kind="primary" act="start-strand" onPress={() => void begin()}>
            {said().begin}
          </BigButton>
        </>
      }
    >
      <Caution>
        <p>{said().caution}</p>
      </Caution>
      <Refusal refusal={asked.refusal()} />
      <div class="strand-form">
        <PartForm step={props} form={asked} questions={where} words={words.strandTest.forms.strand} />
        <Show
          when={isSame() && before}
          fallback={
            <PartForm
              step={props}
              form={asked}
              questions={theMix}
              words={words.strandTest.forms.strand}
              picks={{ ...minutePicks, line: listLines(props.consultation.record, props.settings) }}
            />
          }
        >
          {(same) => <SameMix strand={same()} settings={props.settings} onChange={() => setIsSame(false)} />}
        </Show>
        <PartForm step={props} form={asked} questions={rest} words={words.strandTest.forms.strand} />
      </div>
    </StepPage>
  );
}
