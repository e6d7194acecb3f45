import { createMemo, createSignal, Show } from 'solid-js';
import { issueTonerPermit } from '../../../shared/judgement/permit';
import type { PermitRefusal } from '../../../shared/judgement/permitRefusal';
import { stretchForm } from '../../../shared/records/forms/bowl';
import { findFelt, hasBrokenAtLook } from '../../../shared/records/tonerProof';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { HandCaution } from '../../parts/HandCaution';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { ByName } from '../ByName';
import { createEventForm } from '../eventForm';
import { PartSheet } from '../PartSheet';
import { HeadSeen } from '../practice/StrandSeen';
import { SentRefusal } from '../SentRefusal';
import type { StepProps } from '../stepProps';

const { stretch } = stretchForm;
const { when: _codeWhen, ...code } = stretchForm.code;
const { when: _wordsWhen, ...ownWords } = stretchForm.words;
const asks = { stretch } as const;

/** What this page is for: nobody has felt it, or too long ago. */
const feelable: readonly string[] = ['stretchUnfelt', 'stretchDried'];

/** What the very hair says, rinsed and wet, before anything else goes on it. */
export function FeelPage(
  props: StepProps & {
    readonly zone: Zone;
    readonly onClose: () => void;
    readonly onFelt: () => void;
  },
) {
  const { record } = props.consultation;
  const felt = findFelt(record, props.zone);
  return felt === null || felt.stretch === 'springsBack' ? <Feel {...props} /> : <Weak {...props} />;
}

function Feel(
  props: StepProps & { readonly zone: Zone; readonly onClose: () => void; readonly onFelt: () => void },
) {
  const words = useWords();
  const { record } = props.consultation;
  const name = `${props.consultation.id}/feel/${props.zone}/${record.stretches.length}`;
  const asked = createEventForm(props, asks, name, {});
  /** What else keeps a toner back. */
  const against = createMemo((): PermitRefusal | null => {
    const permit = issueTonerPermit(props.consultation.record, props.zone, props.settings, props.nowMs);
    return permit.ok || feelable.includes(permit.error.code) ? null : permit.error;
  });
  const keep = async () => {
    if (await asked.send('STRETCH_NOTED', { zone: props.zone, before: 'stands' })) props.onFelt();
  };
  return (
    <StepPage
      page={props.page}
      title={words.toner.feelTitle(words.general.zones[props.zone])}
      actions={
        <>
          <BigButton act="cancel" onPress={props.onClose}>
            {words.general.back}
          </BigButton>
          <BigButton
            kind={asked.isComplete() ? 'primary' : 'plain'}
            act="keep-stretch"
            isLooked
            onPress={() => void keep()}
          >
            {words.toner.keep}
          </BigButton>
        </>
      }
    >
      <HeadSeen {...props} zone={props.zone} isFelt />
      <PartSheet
        step={props}
        form={asked}
        questions={asks}
        words={words.toner.felt}
        summary={words.toner.feelSummary}
      >
        <p class="limits">{words.toner.slowWaits}</p>
      </PartSheet>
      <Show when={against()} fallback={<HandCaution caution="outcome" />}>
        {(why) => <Refusal refusal={{ kind: 'permit', permit: why() }} />}
      </Show>
      <SentRefusal refusal={asked.refusal()} />
    </StepPage>
  );
}

/**
 * Weak: no toner today. That it was felt wrongly is said by name and reason, and the hair is felt anew with it; what broke at
 * a look is taken back by nobody.
 */
function Weak(
  props: StepProps & { readonly zone: Zone; readonly onClose: () => void; readonly onFelt: () => void },
) {
  const words = useWords();
  const [isCorrecting, setIsCorrecting] = createSignal(false);
  const zone = () => words.general.zones[props.zone];
  const title = () => (hasBroken() ? words.toner.title(zone()) : words.toner.feelTitle(zone()));
  const { record } = props.consultation;
  const hasBroken = () => hasBrokenAtLook(props.consultation.record, props.zone);
  const sayWorst = () => {
    const felt = findFelt(props.consultation.record, props.zone);
    if (hasBroken()) return words.toner.brokeOnHead;
    return felt === null ? '' : words.toner.felt.stretch.options[felt.stretch];
  };
  return (
    <Show
      when={isCorrecting()}
      fallback={
        <StepPage
          page={props.page}
          title={title()}
          actions={
            <>
              <Show when={!hasBroken()}>
                <BigButton act="told-wrongly" onPress={() => setIsCorrecting(true)}>
                  {words.toner.toldWrongly}
                </BigButton>
              </Show>
              <BigButton kind="primary" act="cancel" isWay onPress={props.onClose}>
                {words.toner.noneToday}
              </BigButton>
            </>
          }
        >
          <p class="big-word">{sayWorst()}</p>
          <Show
            when={hasBroken()}
            fallback={<Refusal refusal={{ kind: 'permit', permit: { code: 'stretchFails' } }} />}
          >
            <Caution kind="stop">
              <p>{words.toner.brokeWaits}</p>
            </Caution>
          </Show>
        </StepPage>
      }
    >
      <ByName
        {...props}
        title={title()}
        draft={`feel/${props.zone}/${record.stretches.length}`}
        type="STRETCH_NOTED"
        given={{ zone: props.zone, before: 'wrongTap' }}
        questions={{ code, stretch, words: ownWords }}
        words={words.toner.felt}
        act="keep-stretch"
        doIt={words.toner.keep}
        back={words.general.back}
        onClose={() => {
          setIsCorrecting(false);
          props.onFelt();
        }}
      />
    </Show>
  );
}
