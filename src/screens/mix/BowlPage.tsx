import { createMemo, createSignal, Match, Show, Switch } from 'solid-js';
import { ASSUMED_ROUND_G, estimateMixedG } from '../../../shared/hair/amount';
import { issuePermit } from '../../../shared/judgement/permit';
import { bowlForm } from '../../../shared/records/forms/bowl';
import type { RawForm } from '../../../shared/records/readForm';
import type { Zone } from '../../../shared/records/zones';
import { accept } from '../../../shared/result';
import { brand } from '../../../shared/units/brand';
import { formatMass, formatPercent } from '../../../shared/units/format';
import { writeNumber } from '../../../shared/units/numberField';
import { BigButton } from '../../parts/BigButton';
import { HandCaution } from '../../parts/HandCaution';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { sayFieldRefusal } from '../../words/sayRefusal';
import { createEventForm } from '../eventForm';
import { findStuff } from '../findStuff';
import { createKeptDraft } from '../keptDraft';
import { lasting } from '../lastingDrafts';
import { sayNotTested } from './skinTestOf';
import '../layout.css';
import { PartSheet } from '../PartSheet';
import { SentRefusal } from '../SentRefusal';
import type { StepProps } from '../stepProps';
import { Override } from '../strandTest/Override';
import { BowlBeside, BowlGrams } from './BowlGrams';
import { computeBottles, computeBowl, computeWeaker, draftBowl, listBeyond } from './bowlDraft';
import { hasPours } from './pours';
import { ThinningPage } from './ThinningPage';
import { WeighInPage } from './WeighInPage';
import { Limits } from './ZoneCard';

const { zone: _zone, shades, colourG, developerPercent, minutes, batch, heat, ratio, line } = bowlForm;
/** The ratio stands there whatever it is: of powder it says most, and none is usual. */
const { or: _usual, ...shownRatio } = ratio;
/** Line and ratio are bound to what was tested: they stand after what is weighed, before what nobody has to say. */
const whole = { colourG, shades, developerPercent, minutes, line, ratio: shownRatio, batch, heat } as const;

/** Offered in one tap. common practice, no source: from a fringe to a full head of long hair. */
const colourPicks = { g: ['20', '30', '40', '60', '80'], oz: ['0.7', '1', '1.4', '2', '2.8'] } as const;

/** A bowl for one zone: what goes in, within what was tested, and the grams of it as they are typed. */
export function BowlPage(
  props: StepProps & {
    readonly zone: Zone;
    readonly onClose?: () => void;
    /** It stands weighed: where that leads elsewhere than closing does. */
    readonly onWeighed?: () => void;
    /** It was opened while another zone is on the head: there it leads back. */
    readonly isFromHead?: boolean;
  },
) {
  const words = useWords();
  const { record } = props.consultation;
  const permit = createMemo(() =>
    issuePermit(props.consultation.record, props.zone, props.settings, props.nowMs),
  );
  const first = permit();
  const initial = first.ok ? draftBowl(record, props.settings, first.value) : {};
  const before = record.bowls.filter(({ zone }) => zone === props.zone);
  const name = `${props.consultation.id}/bowl/${props.zone}/${record.decision?.seq}/${before.length}`;
  const asked = createEventForm(props, whole, name, initial, lasting);
  const pours = createKeptDraft(`${name}/pours`, {}, props.settings, lasting);
  const isBegun = () => hasPours(pours.raw());
  const bowl = createMemo(() =>
    computeBowl(props.consultation.record, props.settings, asked.draft.raw(), props.zone, props.nowMs),
  );
  const made = () => {
    const mixed = bowl();
    return mixed.ok ? mixed.value : null;
  };
  /** The bottle in the field is too strong: of what is allowed instead it may be thinned. */
  const weaker = createMemo(() =>
    computeWeaker(
      bowl(),
      props.consultation.record,
      props.settings,
      asked.draft.raw(),
      props.zone,
      props.nowMs,
    ),
  );
  const toThin = () => made() ?? weaker();
  const bottles = createMemo(() => {
    const mixed = made();
    return mixed === null
      ? accept(null)
      : computeBottles(asked.draft.raw(), mixed, props.settings, props.nowMs);
  });
  /** Whether or not they still make the strength: they can be given up. */
  const areBottlesTold = () => {
    const { bottles } = asked.draft.raw();
    return Array.isArray(bottles) && bottles.length > 0;
  };
  const two = () => {
    const result = bottles();
    return result.ok ? result.value : null;
  };
  const [aside, setAside] = createSignal<'thin' | 'weighIn' | 'sign' | null>(null);
  const close = () => setAside(null);
  const given = () => {
    const issued = permit();
    return issued.ok ? issued.value : null;
  };
  /** More than the scalp takes is signed for at the scale, before anything is in the bowl. */
  const maySign = () => given()?.isLowered === true && props.isFromHead !== true && !isBegun();
  const line = () => {
    const { line: chosen } = asked.draft.raw();
    return typeof chosen === 'string' ? chosen : '';
  };
  const isLightener = () =>
    findStuff(props.settings, props.consultation.record.answers, line()) === 'lightener';
  const notTested = () =>
    sayNotTested(props.consultation.record.skinTest, { line: line(), isLightener: isLightener() }, words);
  const sayAmount = () => {
    const { low, typical, high } = estimateMixedG(props.consultation.record.answers, props.zone);
    const round = (grams: number) => Math.round(grams / ASSUMED_ROUND_G) * ASSUMED_ROUND_G;
    const write = (grams: number) => formatMass(brand(round(grams)), props.settings.units, words.locale);
    return words.mix.amount(write(typical), write(low), write(high));
  };
  /** The pause before mixing: the button says which bottle is in the hand, where one is told. */
  const sayWeighed = () => {
    const write = (percent: number) => formatPercent(percent, props.settings.units, words.locale);
    const both = two();
    const sayPour = (grams: number, percent: number) =>
      words.mix.pour(formatMass(brand(grams), props.settings.units, words.locale), write(percent));
    if (both !== null) {
      const { strongG, strongPercent, weakG, weakPercent } = both;
      return words.mix.weighedWithTwo(sayPour(strongG, strongPercent), sayPour(weakG, weakPercent));
    }
    const { bottlePercent } = made() ?? {};
    return bottlePercent === undefined ? words.mix.weigh : words.mix.weighedWith(write(bottlePercent));
  };
  const weigh = async (also: RawForm = {}) => {
    const isTaken = await asked.send('BOWL_WEIGHED', { ...also, zone: props.zone });
    if (isTaken) (props.onWeighed ?? props.onClose)?.();
    return isTaken;
  };
  const isRefused = () => !bottles().ok || isAgainst(bowl());
  const openThinning = () => (
    <BigButton kind="quiet" act="thin" onPress={() => setAside('thin')}>
      {words.mix.thin.open}
    </BigButton>
  );
  /** Two bottles make what the bowl says; where its bottle was too strong, the strongest that is allowed. */
  const useBottles = (rows: readonly RawForm[], percent: number) => {
    const strength = writeNumber(percent, developerPercent.field, props.settings.units);
    if (weaker() !== null) asked.draft.set('developerPercent', strength);
    asked.draft.set('bottles', rows);
    asked.onChange('bottles', rows);
    close();
  };
  const page = () => (
    <StepPage
      page={props.page}
      title={words.mix.titleFor(words.general.zones[props.zone])}
      actions={
        <>
          <BowlBeside bowl={bowl()} bottles={two()} settings={props.settings} />
          <Show when={props.onClose}>
            {(close) => (
              <BigButton act="cancel" onPress={close()}>
                {props.isFromHead === true ? words.general.back : words.mix.toBowls}
              </BigButton>
            )}
          </Show>
          <Show when={maySign()}>
            <BigButton act="sign-scalp" onPress={() => setAside('sign')}>
              {words.mix.signScalp}
            </BigButton>
          </Show>
          <Show
            when={isBegun()}
            fallback={
              <BigButton
                kind="primary"
                act="weigh"
                isLooked
                isDisabled={isRefused()}
                onPress={() => void weigh()}
              >
                {sayWeighed()}
              </BigButton>
            }
          >
            <BigButton
              kind="primary"
              act="weigh-in"
              isDisabled={isRefused()}
              onPress={() => setAside('weighIn')}
            >
              {words.mix.weighIn.goOn}
            </BigButton>
          </Show>
        </>
      }
    >
      <PartSheet
        step={props}
        form={asked}
        questions={whole}
        words={words.mix.bowl}
        picks={{ colourG: colourPicks[props.settings.units.mass] }}
        also={listBeyond(bowl(), props.settings)}
        summary={words.mix.grams}
        corner={(path) => path === 'developerPercent' && weaker() !== null && openThinning()}
      >
        <BowlGrams zone={props.zone} bowl={bowl()} bottles={two()} settings={props.settings} />
        <Show when={!bottles().ok}>
          <p class="broke-line">{sayFieldRefusal(notMade, words, props.settings.units)}</p>
        </Show>
        <p class="limits" data-line="amount">
          {sayAmount()}
        </p>
        <Show when={given()}>{(issued) => <Limits permit={issued()} settings={props.settings} />}</Show>
        <Show when={notTested()}>
          {(what) => (
            <p class="limits" data-line="not-tested">
              <strong>{what()}</strong>
            </p>
          )}
        </Show>
        <Show when={toThin()}>
          <div class="bowl-ways">
            <Show when={made() !== null && !isBegun()}>
              <BigButton
                kind="quiet"
                act="weigh-in"
                isDisabled={isRefused()}
                onPress={() => setAside('weighIn')}
              >
                {words.mix.weighIn.open}
              </BigButton>
            </Show>
            {openThinning()}
          </div>
        </Show>
      </PartSheet>
      <HandCaution caution={isLightener() ? 'weighLightener' : 'weighColour'} />
      <SentRefusal refusal={asked.refusal()} />
    </StepPage>
  );
  return (
    <Switch fallback={page()}>
      <Match when={aside() === 'sign'}>
        <Override {...props} rule="judgement.onScalp" title={words.mix.signForScalp} onClose={close} />
      </Match>
      <Match when={aside() === 'thin' && toThin()}>
        {(mixed) => (
          <ThinningPage
            {...props}
            wantedPercent={mixed().bottlePercent}
            developerG={mixed().developerG}
            isUsed={areBottlesTold()}
            onUse={(rows) => useBottles(rows, mixed().bottlePercent)}
            onClose={close}
          />
        )}
      </Match>
      <Match when={aside() === 'weighIn' && made()}>
        {(mixed) => (
          <WeighInPage
            {...props}
            mixture={mixed()}
            bottles={two()}
            draft={pours}
            weighed={sayWeighed()}
            refusal={asked.refusal()}
            refused={asked.refusals()}
            onWeighed={weigh}
            onClose={close}
          />
        )}
      </Match>
    </Switch>
  );
}

/** Said of two bottles that no longer make what the bowl asks for. */
const notMade = { path: 'bottles', code: 'bottlesDoNotMakeIt' } as const;

/** Refused by gate or scale; while a field is open the button says which. */
const isAgainst = (bowl: ReturnType<typeof computeBowl>): boolean => !bowl.ok && bowl.error.kind !== 'open';
