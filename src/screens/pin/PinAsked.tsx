import { createMemo, createSignal, on, Show } from 'solid-js';
import { formatCountdown } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { PinInUse, PinTried } from '../../station/pin/createPin';
import { PinPad } from './PinPad';

/** The PIN, before what it guards; how long to wait after a wrong one; and what is done when it is forgotten. */
export function PinAsked(props: {
  readonly pin: PinInUse;
  readonly nowMs: number;
  readonly units: UnitSettings;
  readonly onRight: () => void;
}) {
  const words = useWords();
  const said = () => words.pin;
  const [typed, setTyped] = createSignal('');
  const [tried, setTried] = createSignal<PinTried | 'checking' | null>(null);
  const [isForgotten, setIsForgotten] = createSignal(false);
  /** Anew with each second; what is left is reckoned by the tablet's own clock. */
  const waitMs = createMemo(on([() => props.nowMs, tried], () => props.pin.waitLeftMs()));
  const open = async () => {
    const pin = typed();
    setTyped('');
    setTried('checking');
    const result = await props.pin.attempt(pin);
    setTried(result);
    if (result === 'right') props.onRight();
  };
  const say = () => {
    if (tried() === 'checking') return said().checking;
    if (waitMs() > 0) return said().waits(formatCountdown(waitMs()));
    if (tried() === 'notKept') return said().notKept;
    return tried() === 'wrong' ? said().wrong : '';
  };
  const falls = () => {
    const atMs = props.pin.fallsAtMs();
    return atMs === null ? null : said().falls(words.moments.dayAndTime(atMs));
  };
  return (
    <div class="pin-asked" data-pin={isForgotten() ? 'forgotten' : waitMs() > 0 ? 'waiting' : 'asked'}>
      <Show
        when={!isForgotten()}
        fallback={
          <>
            <h3>{said().forgottenTitle}</h3>
            <p>{said().forgottenHint}</p>
            <p role="status">
              <strong>{falls()}</strong>
            </p>
            <div class="dialog-actions">
              <BigButton act="back-to-pin" isWay onPress={() => setIsForgotten(false)}>
                {said().backToPin}
              </BigButton>
              <Show when={falls() === null}>
                <BigButton kind="primary" act="forget-pin" isWay onPress={() => void props.pin.forget()}>
                  {said().forget}
                </BigButton>
              </Show>
            </div>
          </>
        }
      >
        <p>{said().why}</p>
        <Show when={falls()}>{(line) => <p>{line()}</p>}</Show>
        <PinPad
          text={typed()}
          done={said().done}
          isResting={tried() === 'checking' || waitMs() > 0}
          units={props.units}
          onChange={setTyped}
          onDone={() => void open()}
        />
        <div class="pin-said">
          <p role="status">
            <strong>{say()}</strong>
          </p>
          <BigButton kind="quiet" act="pin-forgotten" isWay onPress={() => setIsForgotten(true)}>
            {said().forgotten}
          </BigButton>
        </div>
      </Show>
    </div>
  );
}
