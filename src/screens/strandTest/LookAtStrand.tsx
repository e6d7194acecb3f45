import { createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import type { Form } from '../../../shared/records/form';
import { lookForm } from '../../../shared/records/forms/test';
import { findStrand } from '../../../shared/records/record';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { HandCaution } from '../../parts/HandCaution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { ClockLine } from '../clocks/ClockLine';
import { createEventForm } from '../eventForm';
import { StrandSeen } from '../practice/StrandSeen';
import type { StepProps } from '../stepProps';
import { Tile, Tiles } from '../Tiles';
import { Heed } from './Heed';
import { listAllLevels, listLevelPicks } from './levelPicks';
import { RunningLine } from './RunningLine';
import { sayBesideLast } from './sayLevelHeard';
import { AllUndertones, UndertoneTiles } from './UndertoneTiles';

const { when: _strandLevel, ...level } = lookForm.level;
const { when: _strandUndertone, ...undertone } = lookForm.undertone;
const { when: _strandFeel, ...feel } = lookForm.feel;
const form = { feel, undertone, level } as const satisfies Form;

/**
 * One look in two taps: how light it is, then how it feels, which keeps it. In between the undertone stands as the level
 * says, a tap names another. Its clock runs on above.
 */
export function LookAtStrand(props: StepProps & { readonly zone: Zone; readonly onClose: () => void }) {
  const words = useWords();
  const said = () => words.strandTest.processing;
  const asks = () => words.strandTest.forms.look;
  const strand = createMemo(() => findStrand(props.consultation.record, props.zone));
  const clock = createMemo(() => props.consultation.record.clocks.find(({ id }) => id === strand()?.clock));
  const draftName = `${props.consultation.id}/look/${strand()?.clock}/${strand()?.looks.length}`;
  const asked = createEventForm(props, form, draftName, {});
  const [areAllShown, setAreAllShown] = createSignal(false);
  const [isNaming, setIsNaming] = createSignal(false);
  const chosen = () => asked.draft.raw().level;
  /** As it will be kept: named, or as the level says; where nobody knows the level, nothing is to be expected. */
  const chosenUndertone = () =>
    String(asked.draft.raw().undertone ?? (chosen() === 'unknown' ? 'unknown' : 'asExpected'));
  const heard = () =>
    sayBesideLast(Number(chosen()), props.consultation.record, props.zone, words, props.settings.units);
  const levels = () => {
    const { record } = props.consultation;
    return areAllShown() ? listAllLevels() : listLevelPicks(record, props.zone);
  };
  const sayLevel = (text: string) =>
    text === 'unknown'
      ? words.general.dontKnow
      : said().levelIs(formatQuantity(Number(text), 'level', props.settings.units, words.locale));
  /** What was tapped at a look that was left is no reading of the next one. */
  const leave = () => {
    asked.draft.begin({});
    props.onClose();
  };
  const back = () => {
    if (isNaming()) return setIsNaming(false);
    if (chosen() === undefined) return leave();
    // Another level expects another undertone.
    asked.draft.begin({});
  };
  const name = (option: string) => {
    asked.draft.set('undertone', option);
    setIsNaming(false);
  };
  const title = () => {
    if (chosen() === undefined) return asks().level.ask;
    return isNaming() ? asks().undertone.ask : asks().feel.ask;
  };
  const keep = async (felt: string) => {
    asked.draft.set('undertone', chosenUndertone());
    asked.draft.set('feel', felt);
    if (await asked.send('LOOKED', { of: 'strand', zone: props.zone })) props.onClose();
  };
  return (
    <StepPage
      page={props.page}
      title={title()}
      {...(chosen() === undefined ? {} : { also: sayLevel(String(chosen())) })}
      actions={
        <BigButton act="cancel" onPress={back}>
          {words.general.back}
        </BigButton>
      }
    >
      <ClockLine
        clock={clock()}
        strandNumber={strand()?.number ?? null}
        nowMs={props.nowMs}
        units={props.settings.units}
      />
      <RunningLine {...props} not={props.zone} />
      <StrandSeen {...props} zone={props.zone} />
      <Switch
        fallback={
          <>
            <Heed line="level-heard" says={heard()} />
            <UndertoneTiles
              level={Number(chosen())}
              chosen={chosenUndertone()}
              onChoose={name}
              onMore={() => setIsNaming(true)}
            />
            <Tiles question="feel" label={asks().feel.ask} size="large" takesFocus>
              <For each={feel.options}>
                {(option) => (
                  <Tile option={option} onPress={() => void keep(option)}>
                    {asks().feel.options[option]}
                  </Tile>
                )}
              </For>
            </Tiles>
          </>
        }
      >
        <Match when={chosen() === undefined}>
          <Tiles question="level" label={asks().level.ask}>
            <For each={levels()}>
              {(text) => (
                <Tile option={text} isFigure onPress={() => asked.draft.set('level', text)}>
                  {formatQuantity(Number(text), 'level', props.settings.units, words.locale)}
                </Tile>
              )}
            </For>
            <Tile option="unknown" onPress={() => asked.draft.set('level', 'unknown')}>
              {words.general.dontKnow}
            </Tile>
            <Show when={!areAllShown()}>
              <Tile act="other-level" onPress={() => setAreAllShown(true)}>
                {said().otherLevel}
              </Tile>
            </Show>
          </Tiles>
        </Match>
        <Match when={isNaming()}>
          <AllUndertones chosen={chosenUndertone()} onChoose={name} />
        </Match>
      </Switch>
      <Refusal refusal={asked.refusal()} />
      {/* Once the level is told it has been wiped and blotted, and its room is the answers'. */}
      <Show when={!areAllShown() && chosen() === undefined}>
        <HandCaution caution="look" />
      </Show>
    </StepPage>
  );
}
