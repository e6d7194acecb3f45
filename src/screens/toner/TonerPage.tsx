import { createMemo, Show } from 'solid-js';
import { ASSUMED_TONER_MAX_MIN, TONER_MAX_PERCENT } from '../../../shared/judgement/tonerLimits';
import { findTonerLineRefusal } from '../../../shared/judgement/tonerLine';
import { tonerForm } from '../../../shared/records/forms/bowl';
import type { Zone } from '../../../shared/records/zones';
import { formatPercent, formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { HandCaution } from '../../parts/HandCaution';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { BowlBeside, BowlGrams } from '../mix/BowlGrams';
import { sayNotTested } from '../mix/skinTestOf';
import { PartSheet } from '../PartSheet';
import { SentRefusal } from '../SentRefusal';
import type { StepProps } from '../stepProps';
import { computeToner, draftToner } from './tonerDraft';

const { line, developerPercent, minutes, ratio, colourG, shades, batch } = tonerForm;
const asks = { line, developerPercent, minutes, ratio, colourG, shades, batch } as const;

/** Offered in one tap. common practice, no source: what a toner takes, and for how long. */
const picks = { developerPercent: ['1.5', '3'], minutes: ['5', '10', '15', '20'], ratio: ['1', '1.5', '2'] };
const colourPicks = { g: ['20', '30', '40', '60'], oz: ['0.7', '1', '1.4', '2'] } as const;

/** The second bowl of a zone: deposit only, within a toner's permit. */
export function TonerPage(
  props: StepProps & {
    readonly zone: Zone;
    readonly onClose: () => void;
    readonly onFeelAgain: () => void;
  },
) {
  const words = useWords();
  const { record } = props.consultation;
  const before = record.bowls.filter(({ zone }) => zone === props.zone);
  const name = `${props.consultation.id}/toner/${props.zone}/${before.length}`;
  const asked = createEventForm(props, asks, name, draftToner(record, props.settings, words.toner.shade));
  const bowl = createMemo(() =>
    computeToner(props.consultation.record, props.settings, asked.draft.raw(), props.zone, props.nowMs),
  );
  const lines = createMemo(() =>
    props.settings.shelf
      .map(({ name: line }) => line)
      .filter((line) => findTonerLineRefusal(record, { line, developerPercent: 0 }, props.settings) === null),
  );
  const maxPercent = () => Math.min(TONER_MAX_PERCENT, props.settings.profile.ceilingPercent);
  const saysLimits = () =>
    words.toner.limits(
      formatPercent(maxPercent(), props.settings.units, words.locale),
      formatQuantity(ASSUMED_TONER_MAX_MIN, 'minutes', props.settings.units, words.locale),
    );
  /** The pause before mixing: the button says which bottle is in the hand. */
  const sayWeighed = () => {
    const made = bowl();
    if (!made.ok) return words.mix.weigh;
    return words.mix.weighedWith(formatPercent(made.value.bottlePercent, props.settings.units, words.locale));
  };
  const notTested = () => {
    const { line: named } = asked.draft.raw();
    return sayNotTested(
      props.consultation.record.skinTest,
      { line: typeof named === 'string' ? named : '', isLightener: false },
      words,
    );
  };
  const weigh = async () => {
    if (await asked.send('TONER_WEIGHED', { zone: props.zone })) props.onClose();
  };
  return (
    <StepPage
      page={props.page}
      title={words.toner.title(words.general.zones[props.zone])}
      actions={
        <>
          <BowlBeside bowl={bowl()} settings={props.settings} />
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <BigButton act="feel-again" onPress={props.onFeelAgain}>
            {words.toner.feelAgain}
          </BigButton>
          <BigButton
            kind={asked.isComplete() ? 'primary' : 'plain'}
            act="weigh-toner"
            isLooked
            onPress={() => void weigh()}
          >
            {sayWeighed()}
          </BigButton>
        </>
      }
    >
      <PartSheet
        step={props}
        form={asked}
        questions={asks}
        words={words.toner.bowl}
        picks={{
          ...picks,
          line: lines(),
          developerPercent: picks.developerPercent.filter((each) => Number(each) <= maxPercent()),
          colourG: colourPicks[props.settings.units.mass],
        }}
        summary={words.mix.grams}
      >
        <BowlGrams zone={props.zone} bowl={bowl()} settings={props.settings} />
        <p class="limits" data-panel="limits">
          {saysLimits()}
        </p>
        <Show when={notTested()}>
          {(says) => (
            <p class="limits" data-line="not-tested">
              {says()}
            </p>
          )}
        </Show>
        <Show when={lines().length === 0}>
          <p class="limits">{words.toner.noToner}</p>
        </Show>
      </PartSheet>
      <HandCaution caution="weighColour" />
      <SentRefusal refusal={asked.refusal()} />
    </StepPage>
  );
}
