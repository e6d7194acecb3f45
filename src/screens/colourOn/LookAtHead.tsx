import { createMemo, Show } from 'solid-js';
import type { RawEvent } from '../../../shared/records/classify';
import type { Zone } from '../../../shared/records/zones';
import { BigButton } from '../../parts/BigButton';
import { HoldButton } from '../../parts/HoldButton';
import { Refusal } from '../../parts/Refusal';
import { StepPage } from '../../parts/StepPage';
import { useWords } from '../../parts/useWords';
import { ClockLine } from '../clocks/ClockLine';
import { HeadSeen } from '../practice/StrandSeen';
import { createSender } from '../sender';
import type { StepProps } from '../stepProps';
import { Tile, Tiles } from '../Tiles';
import { listOnHead } from './viewHead';

/**
 * A look at the head: does it sting, and does the hair hold? One tap in the middle, where nothing stood before. Stinging
 * opens the rinse steps at once; hair that breaks ends its time.
 */
export function LookAtHead(props: StepProps & { readonly zone: Zone; readonly onClose: () => void }) {
  const words = useWords();
  const said = () => words.colourOn;
  const sender = createSender(props);
  const clock = createMemo(
    () => listOnHead(props.consultation, props.nowMs).find(({ bowl }) => bowl.zone === props.zone)?.clock,
  );
  const look = (answers: { stinging: 'no'; hair: 'sound' | 'stretchy' | 'breaking' } | { stinging: 'yes' }) =>
    ({ type: 'LOOKED', answers: { of: 'head', zone: props.zone, ...answers } }) satisfies RawEvent;
  const keep = async (hair: 'sound' | 'stretchy' | 'breaking') => {
    if (await sender.send(look({ stinging: 'no', hair }))) props.onClose();
  };
  /** Yes opens the rinse steps by itself, kept or not: she burns now. */
  const sayYes = () => props.rinseSteps.open(look({ stinging: 'yes' }));
  return (
    <StepPage
      page={props.page}
      title={said().lookAsk}
      also={words.general.zones[props.zone]}
      actions={
        <BigButton act="cancel" isWay onPress={props.onClose}>
          {words.general.back}
        </BigButton>
      }
    >
      <Show when={clock()}>
        {(running) => (
          <ClockLine clock={running()} strandNumber={null} nowMs={props.nowMs} units={props.settings.units} />
        )}
      </Show>
      <HeadSeen {...props} zone={props.zone} />
      <p class="lead">{said().askAloud}</p>
      <Tiles question="headLook" label={said().lookAsk} size="two">
        <Tile act="hair-sound" isLooked onPress={() => void keep('sound')}>
          {said().hair.sound}
        </Tile>
        <Tile act="hair-stretchy" isLooked onPress={() => void keep('stretchy')}>
          {said().hair.stretchy}
        </Tile>
        <BigButton kind="danger" act="stinging-yes" onPress={sayYes}>
          {said().yes}
        </BigButton>
        <HoldButton label={said().hair.breaking} act="hair-breaking" onHeld={() => void keep('breaking')} />
      </Tiles>
      <Refusal refusal={sender.refusal()} />
    </StepPage>
  );
}
