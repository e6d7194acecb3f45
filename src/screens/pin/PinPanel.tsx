import { createSignal, For, Show } from 'solid-js';
import { isEasyPin } from '../../../shared/pin/pinRecord';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { Dialog } from '../../parts/Dialog';
import { useWords } from '../../parts/useWords';
import type { PinInUse } from '../../station/pin/createPin';
import { PinPad } from './PinPad';

/** In the settings: is there a PIN on this tablet, set, changed or taken off, and what it does not protect. */
export function PinPanel(props: { readonly pin: PinInUse; readonly units: UnitSettings }) {
  const words = useWords();
  const said = () => words.pin;
  const [isSetting, setIsSetting] = createSignal(false);
  const [hasFailed, setHasFailed] = createSignal(false);
  const isSet = () => props.pin.isSet() === true;
  return (
    <section class="panel" data-panel="pin" data-pin-set={isSet() ? 'yes' : 'no'}>
      <h2>{said().panel}</h2>
      <p>{said().panelHint}</p>
      <p role="status">
        <strong>{hasFailed() ? said().notSet : isSet() ? said().isSet : said().isNotSet}</strong>
      </p>
      <Show when={props.pin.mayBeSet} fallback={<p>{said().needsSecure}</p>}>
        <div class="pin-ways">
          <BigButton act="set-pin" onPress={() => setIsSetting(true)}>
            {isSet() ? said().change : said().set}
          </BigButton>
          <Show when={isSet()}>
            <BigButton
              kind="quiet"
              act="take-off-pin"
              onPress={() => void props.pin.takeOff().then((done) => setHasFailed(!done))}
            >
              {said().takeOff}
            </BigButton>
          </Show>
        </div>
      </Show>
      <Caution kind="plain">
        <h3>{said().honestTitle}</h3>
        <ul>
          <For each={said().honest}>{(line) => <li>{line}</li>}</For>
        </ul>
      </Caution>
      <Dialog isOpen={isSetting()} title={said().newTitle} onClose={() => setIsSetting(false)}>
        <NewPin
          units={props.units}
          onKeep={async (pin) => {
            setHasFailed(!(await props.pin.set(pin)));
            setIsSetting(false);
          }}
        />
      </Dialog>
    </section>
  );
}

/** Twice the same six figures. */
function NewPin(props: { readonly units: UnitSettings; readonly onKeep: (pin: string) => Promise<void> }) {
  const words = useWords();
  const said = () => words.pin;
  const [typed, setTyped] = createSignal('');
  const [first, setFirst] = createSignal<string | null>(null);
  const [why, setWhy] = createSignal<'differs' | 'easy' | null>(null);
  const [isKeeping, setIsKeeping] = createSignal(false);
  const goOn = () => {
    const pin = typed();
    setTyped('');
    if (first() === null) {
      setWhy(isEasyPin(pin) ? 'easy' : null);
      if (!isEasyPin(pin)) setFirst(pin);
    } else if (first() === pin) {
      setIsKeeping(true);
      void props.onKeep(pin);
    } else {
      setFirst(null);
      setWhy('differs');
    }
  };
  const say = () => {
    const refused = why();
    if (refused === null) return '';
    return refused === 'easy' ? said().easy : said().differs;
  };
  return (
    <div class="pin-asked" data-pin={first() === null ? 'new' : 'again'}>
      <p>{first() === null ? said().newHint : said().again}</p>
      <PinPad
        text={typed()}
        done={first() === null ? said().next : said().keep}
        isResting={isKeeping()}
        units={props.units}
        onChange={setTyped}
        onDone={goOn}
      />
      <p role="status">
        <strong>{isKeeping() ? said().checking : say()}</strong>
      </p>
    </div>
  );
}
