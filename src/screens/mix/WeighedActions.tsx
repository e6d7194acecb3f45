import { type Accessor, createSignal, Show } from 'solid-js';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { useWords } from '../../parts/useWords';
import type { Sender } from '../sender';

/** Somebody says that her skin is not calm, and may have tapped wrongly: nothing is written until the bowl goes. */
export interface NotCalm {
  readonly isSaid: Accessor<boolean>;
  readonly say: (isSaid: boolean) => void;
}

export function createNotCalm(): NotCalm {
  const [isSaid, say] = createSignal(false);
  return { isSaid, say };
}

/** A bowl that stands there weighed: on the head, or away. */
export function WeighedActions(props: {
  readonly zone: Zone;
  readonly mayApply: boolean;
  readonly sender: Sender;
  readonly notCalm: NotCalm;
  /** It was thrown because her skin is not calm. */
  readonly onThrown?: () => void;
  /** Other things are on the screen than this bowl. */
  readonly isAside?: boolean;
}) {
  const words = useWords();
  const kind = () => (props.isAside === true ? 'plain' : 'primary');
  const throwIt = async () => {
    const { notCalm, sender, zone } = props;
    const isNotCalm = notCalm.isSaid();
    const answers = { zone, ...(isNotCalm ? { why: 'skinNotCalm' } : {}) };
    const isTaken = await sender.send({ type: 'BOWL_THROWN', answers });
    if (!isTaken) return;
    notCalm.say(false);
    if (isNotCalm) props.onThrown?.();
  };
  return (
    <>
      <HoldButton label={words.mix.throwAway} act="throw" kind="plain" onHeld={() => void throwIt()} />
      <Show
        when={props.mayApply}
        fallback={
          <BigButton kind={kind()} act="apply" isDisabled onPress={() => undefined}>
            {words.mix.apply(words.general.zones[props.zone])}
          </BigButton>
        }
      >
        <Show
          when={!props.notCalm.isSaid()}
          fallback={
            <BigButton act="calm-after-all" isLooked onPress={() => props.notCalm.say(false)}>
              {words.mix.calmAfterAll}
            </BigButton>
          }
        >
          <BigButton act="skin-not-calm" onPress={() => props.notCalm.say(true)}>
            {words.mix.notCalm}
          </BigButton>
          <BigButton
            kind={kind()}
            act="apply"
            isLooked
            onPress={() =>
              void props.sender.send({
                type: 'BOWL_APPLIED',
                answers: { zone: props.zone, skinFirst: 'calm' },
              })
            }
          >
            {words.mix.apply(words.general.zones[props.zone])}
          </BigButton>
        </Show>
      </Show>
    </>
  );
}
