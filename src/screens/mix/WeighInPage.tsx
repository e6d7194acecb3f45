import { createMemo, createSignal, For, Show } from 'solid-js';
import type { Mixture } from '../../../shared/judgement/mixture';
import type { FieldRefusal, RawForm } from '../../../shared/records/readForm';
import type { Zone } from '../../../shared/records/zones';
import { brand } from '../../../shared/units/brand';
import { formatMass, formatPercent } from '../../../shared/units/format';
import { writeNumber } from '../../../shared/units/numberField';
import { BigButton } from '../../parts/BigButton';
import { listMistakes } from '../../parts/form/draft';
import { Sheet } from '../../parts/form/Sheet';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { sayFieldRefusal } from '../../words/sayRefusal';
import type { TapRefusal } from '../explainRefusal';
import type { KeptDraft } from '../keptDraft';
import { SentRefusal } from '../SentRefusal';
import type { StepProps } from '../stepProps';
import type { TwoBottles } from './bowlDraft';
import { askPour, carryPours, computePouring, isOfDeveloper, nameThings, writeWeighed } from './pours';

/**
 * One thing after another onto the scale, each from zero: what it says is tapped or typed, and where too much went in the
 * rest grows with it. A tap on a line goes back to that pour. Checked in tests/src/screens/mix/weighIn.test.tsx.
 */
export function WeighInPage(
  props: StepProps & {
    readonly zone: Zone;
    readonly mixture: Mixture;
    readonly bottles: TwoBottles | null;
    /** What is in so far. */
    readonly draft: KeptDraft;
    /** What the button says that calls it weighed. */
    readonly weighed: string;
    readonly refusal: TapRefusal | null;
    /** What of the bowl as it was sent is wrong. */
    readonly refused: readonly FieldRefusal[];
    readonly onWeighed: (also: RawForm) => Promise<boolean>;
    readonly onClose: () => void;
  },
) {
  const words = useWords();
  const said = () => words.mix.weighIn;
  const count = () => props.mixture.shades.length;
  const draft = props.draft;
  const things = nameThings(props.mixture, props.bottles);
  const carried = carryPours(draft.raw(), things);
  const [isForeign, setIsForeign] = createSignal(!carried.ok);
  const lay = (raw: RawForm) => {
    draft.begin(raw);
    draft.set('of', things);
  };
  if (carried.ok) lay(carried.value);
  const beginAnew = () => {
    lay({});
    setIsForeign(false);
  };
  /** The first developer that goes in: from then on it is mixed. */
  const notePour = (name: string) => {
    if (isOfDeveloper(name, count()) && draft.raw().developerAtMs === undefined) {
      draft.set('developerAtMs', props.nowMs);
      draft.set('developerAfter', props.consultation.log.length);
    }
  };
  const pouring = createMemo(() => computePouring(props.mixture, props.bottles, draft.raw(), props.settings));
  const state = () => {
    const { read } = pouring();
    return read.ok && !isForeign() ? read.value : null;
  };
  const isAllIn = () => state()?.next === null;
  const write = (grams: number) => formatMass(brand(grams), props.settings.units, words.locale);
  const names = createMemo(() => [
    ...props.mixture.shades.map(({ shade }) => shade),
    ...(props.bottles === null
      ? [said().developer]
      : [props.bottles.strongPercent, props.bottles.weakPercent].map((percent) =>
          said().bottle(formatPercent(percent, props.settings.units, words.locale)),
        )),
  ]);
  const form = createMemo(() =>
    Object.fromEntries(pouring().pours.map(({ name }) => [name, askPour(props.settings)])),
  );
  const asks = createMemo(() =>
    Object.fromEntries(
      pouring().pours.map(({ name, item, nth, leftG }) => {
        const what = names()[item] ?? '';
        const short = nth === 0 ? what : said().more(what);
        return [
          name,
          { ask: leftG > 0 ? said().pour(short, write(leftG)) : short, short, hint: said().hint },
        ];
      }),
    ),
  );
  const picks = createMemo(() =>
    Object.fromEntries(
      pouring().pours.map(({ name, leftG }) => [
        name,
        leftG > 0 ? [writeNumber(leftG, askPour(props.settings).field, props.settings.units)] : [],
      ]),
    ),
  );
  const refusals = () =>
    listMistakes(form(), draft.raw(), {
      units: props.settings.units,
      hasAgeLine: false,
      nowMs: props.nowMs,
    });
  const totalIn = () => pouring().inG.reduce((sum, grams) => sum + grams, 0);
  const sayWrong = () => {
    const [first] = props.refused;
    if (isForeign()) return said().foreign;
    if (state() === null) return said().tooMuch;
    if (isAllIn() && first !== undefined) return sayFieldRefusal(first, words, props.settings.units);
    return (state()?.grewBy ?? 1) > 1 ? said().grew : '';
  };
  const finish = async () => {
    const { inG } = pouring();
    const now = { log: props.consultation.log, nowMs: props.nowMs };
    const weighed = writeWeighed(inG, count(), draft.raw(), props.settings, now);
    if (await props.onWeighed(weighed)) draft.drop();
  };
  return (
    <StepPage
      page={props.page}
      title={said().title(words.general.zones[props.zone])}
      actions={
        <>
          <section class="grams-beside" data-panel="weigh-in" aria-live="polite">
            <div class="grams-said" data-figure="in">
              {said().inOf(write(totalIn()), write(state()?.totalG ?? totalIn()))}
            </div>
            <p data-figure="grew">{sayWrong()}</p>
          </section>
          <BigButton act="weigh-in-close" onPress={props.onClose}>
            {said().close}
          </BigButton>
          <Show
            when={state()}
            fallback={
              <BigButton kind="primary" act="pour-anew" onPress={beginAnew}>
                {said().anew}
              </BigButton>
            }
          >
            <BigButton
              kind="primary"
              act="weighed-in"
              isLooked
              isDisabled={!isAllIn() || refusals().length > 0}
              onPress={() => void finish()}
            >
              {props.weighed}
            </BigButton>
          </Show>
        </>
      }
    >
      <div class="looked" data-looked="">
        <Sheet
          form={form()}
          words={asks()}
          draft={draft}
          onChange={notePour}
          refusals={refusals()}
          units={props.settings.units}
          hasAgeLine={false}
          nowMs={props.nowMs}
          picks={picks()}
          summary={said().summary}
        >
          <section class="panel grams-panel" data-panel="weighed-in">
            <table class="grams">
              <tbody>
                <For each={names()}>
                  {(name, item) => (
                    <tr>
                      <td>{name}</td>
                      <td data-figure={`in-${item()}`}>{write(pouring().inG[item()] ?? 0)}</td>
                    </tr>
                  )}
                </For>
                <tr class="together">
                  <td>{words.mix.together}</td>
                  <td data-figure="total-in">{write(totalIn())}</td>
                </tr>
              </tbody>
            </table>
          </section>
        </Sheet>
      </div>
      <SentRefusal refusal={props.refusal} />
    </StepPage>
  );
}
