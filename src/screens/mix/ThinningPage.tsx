import { createMemo, Show } from 'solid-js';
import type { RawForm } from '../../../shared/records/readForm';
import { brand } from '../../../shared/units/brand';
import { formatMass, formatPercent } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { createEventForm } from '../eventForm';
import { PartSheet } from '../PartSheet';
import type { StepProps } from '../stepProps';
import { computeThinning, thinningForm } from './thinningForm';

/**
 * Only other bottles at hand: how much of each, of the same line, for what the bowl says. The bowl takes them over.
 * Checked in tests/src/screens/mix/bowlPage.test.tsx.
 */
export function ThinningPage(
  props: StepProps & {
    readonly wantedPercent: number;
    readonly developerG: number;
    /** Two bottles stand in the bowl already. */
    readonly isUsed: boolean;
    /** Into the bowl with these two, or with one bottle after all. */
    readonly onUse: (bottles: readonly RawForm[]) => void;
    readonly onClose: () => void;
  },
) {
  const words = useWords();
  const said = () => words.mix.thin;
  const asked = createEventForm(props, thinningForm, `${props.consultation.id}/thin`, {});
  const thinned = createMemo(() =>
    computeThinning(
      asked.draft.raw(),
      { wantedPercent: props.wantedPercent, totalG: props.developerG },
      props.settings,
      props.nowMs,
    ),
  );
  const writeMass = (grams: number) => formatMass(brand(grams), props.settings.units, words.locale);
  const writePercent = (percent: number) => formatPercent(percent, props.settings.units, words.locale);
  const made = () => {
    const result = thinned();
    return result.ok ? result.value : null;
  };
  /** The strength of one of the bottles needs no other. */
  const isOfTwo = () => {
    const bottles = made();
    return bottles !== null && bottles.strongG > 0 && bottles.weakG > 0;
  };
  const use = () => {
    const { strongPercent, weakPercent } = asked.draft.raw();
    props.onUse([{ percent: strongPercent }, { percent: weakPercent }]);
  };
  const against = () => {
    const result = thinned();
    return result.ok || result.error.kind === 'fields' ? '' : said().refusals[result.error.why];
  };
  return (
    <StepPage
      page={props.page}
      title={said().title}
      actions={
        <>
          <BigButton act="thin-close" onPress={props.onClose}>
            {said().close}
          </BigButton>
          <Show when={props.isUsed}>
            <BigButton act="one-bottle" onPress={() => props.onUse([])}>
              {said().one}
            </BigButton>
          </Show>
          <BigButton kind="primary" act="thin-use" isDisabled={!isOfTwo()} onPress={use}>
            {said().use}
          </BigButton>
        </>
      }
    >
      <PartSheet
        step={props}
        form={asked}
        questions={thinningForm}
        words={said().form}
        picks={bottlePicks}
        summary={said().summary}
      >
        <p data-figure="wanted">
          {said().wants(writeMass(props.developerG), writePercent(props.wantedPercent))}
        </p>
        <Show when={made()} fallback={<p class="broke-line">{against()}</p>}>
          {(bottles) => (
            <section class="panel grams-panel" data-panel="thinned">
              <table class="grams">
                <tbody>
                  <tr>
                    <td>{said().of(writePercent(bottles().strongPercent))}</td>
                    <td data-figure="strong">{writeMass(bottles().strongG)}</td>
                  </tr>
                  <tr>
                    <td>{said().of(writePercent(bottles().weakPercent))}</td>
                    <td data-figure="weak">{writeMass(bottles().weakG)}</td>
                  </tr>
                  <tr class="together">
                    <td>{said().makes}</td>
                    <td data-figure="makes">{writePercent(bottles().madePercent)}</td>
                  </tr>
                </tbody>
              </table>
            </section>
          )}
        </Show>
      </PartSheet>
      <p class="soft">{said().hint}</p>
    </StepPage>
  );
}

/** Offered in one tap. common practice, no source: the bottles of the trade. */
const bottlePicks = { strongPercent: ['6', '9', '12'], weakPercent: ['1.5', '3', '6', '9'] };
