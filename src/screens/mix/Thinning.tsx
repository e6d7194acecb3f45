import { createMemo } from 'solid-js';
import { brand } from '../../../shared/units/brand';
import { formatMass, formatPercent } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { createDraft, listMistakes } from '../../parts/form/draft';
import { FormFields } from '../../parts/form/FormFields';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import { computeThinning, thinningForm } from './thinningForm';

/**
 * Only other bottles at hand: how much of each, of the same line, for what the bowl says. Reckoned here, never kept.
 * Checked in tests/src/screens/mix/thinning.test.tsx.
 */
export function Thinning(
  props: Pick<StepProps, 'settings' | 'nowMs'> & {
    readonly wantedPercent: number;
    readonly developerG: number;
    readonly onClose: () => void;
  },
) {
  const words = useWords();
  const said = () => words.mix.thin;
  const draft = createDraft();
  const context = () => ({ units: props.settings.units, hasAgeLine: false, nowMs: props.nowMs });
  const thinned = createMemo(() =>
    computeThinning(
      draft.raw(),
      { wantedPercent: props.wantedPercent, totalG: props.developerG },
      props.settings,
      props.nowMs,
    ),
  );
  const sayThinned = (): string => {
    const result = thinned();
    const { units } = props.settings;
    if (!result.ok) return result.error.kind === 'bottles' ? said().refusals[result.error.why] : '';
    const percentOf = (name: 'strongPercent' | 'weakPercent') =>
      formatPercent(result.value[name], units, words.locale);
    return said().gives(
      formatMass(brand(result.value.strongG), units, words.locale),
      percentOf('strongPercent'),
      formatMass(brand(result.value.weakG), units, words.locale),
      percentOf('weakPercent'),
      formatPercent(result.value.makesPercent, units, words.locale),
    );
  };
  return (
    <section class="panel" data-panel="thinning">
      <h2>{said().title}</h2>
      <p data-figure="wanted">
        {said().wants(
          formatMass(brand(props.developerG), props.settings.units, words.locale),
          formatPercent(props.wantedPercent, props.settings.units, words.locale),
        )}
      </p>
      <FormFields
        form={thinningForm}
        words={said().form}
        draft={draft}
        refusals={listMistakes(thinningForm, draft.raw(), context())}
        units={props.settings.units}
        hasAgeLine={false}
        nowMs={props.nowMs}
        picks={bottlePicks}
      />
      <p aria-live="polite">
        <strong data-figure="thinned">{sayThinned()}</strong>
      </p>
      <p class="soft">{said().hint}</p>
      <BigButton kind="quiet" act="thin-close" onPress={props.onClose}>
        {said().close}
      </BigButton>
    </section>
  );
}

const bottlePicks = { strongPercent: ['6', '9', '12'], weakPercent: ['1.5', '3', '6', '9'] };
