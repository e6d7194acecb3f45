import { createMemo, createSignal, Show } from 'solid-js';
import { computeBoilingPoint } from '../../../../shared/heat/boilingPoint';
import { wetnesses } from '../../../../shared/heat/habit';
import {
  ASSUMED_MOST_PRESSES,
  ASSUMED_ON_PLACE_S,
  ASSUMED_SECTIONS_MM,
} from '../../../../shared/heat/press/choices';
import type { Settings } from '../../../../shared/records/settings';
import { brand } from '../../../../shared/units/brand';
import { formatQuantity } from '../../../../shared/units/format';
import { type Celsius, type Fahrenheit, toCelsius } from '../../../../shared/units/temperature';
import { BigButton } from '../../../parts/BigButton';
import '../../../parts/form/form.css';
import { PlainPage } from '../../../parts/PlainPage';
import { useWords } from '../../../parts/useWords';
import { OneOf } from './OneOf';
import { PressSeen } from './PressSeen';
import './press.css';
import { stepPress } from '../../../../shared/heat/press/press';
import { createInPieces } from './createInPieces';
import { SettingDial } from './SettingDial';
import { type PressChoice, readChoice, viewPress } from './viewPress';
import { WhyPress } from './WhyPress';

/** It begins with what goes wrong: a thick section, pressed once. */
const first = { thicknessMm: 1, wetness: 'dry', contactS: 2, presses: 1 } as const;
/** To what many irons come set. common practice, no source. */
const firstSetting = { C: brand<Celsius>(190), F: toCelsius(brand<Fahrenheit>(380)) } as const;

/**
 * How hot do outside and middle of a section get, fine or thick, dry or wet? To try, on nobody's hair: nothing is
 * written, and nothing of a client is reckoned from it.
 */
export function PressPage(props: { readonly settings: Settings; readonly onBack: () => void }) {
  const words = useWords();
  const said = () => words.press;
  const units = () => props.settings.units;
  const [choice, setChoice] = createSignal<PressChoice>({
    ...first,
    plateC: firstSetting[props.settings.units.temperature],
  });
  /** Whatever is changed, another section is pressed: once. */
  const choose = (next: Partial<PressChoice>) => setChoice((before) => ({ ...before, presses: 1, ...next }));
  const boilingC = createMemo(() => computeBoilingPoint(props.settings.altitudeM));
  const reckoned = createInPieces(choice, (now) => stepPress(readChoice(now, boilingC())));
  const view = createMemo(() => {
    const done = reckoned();
    return done === null ? null : viewPress(done.asked, boilingC(), done.all);
  });
  const isEnough = () => choice().presses >= ASSUMED_MOST_PRESSES;
  const writeMm = (mm: number) => formatQuantity(mm, 'millimetres', units(), words.locale);
  const writeS = (seconds: number) => formatQuantity(seconds, 'seconds', units(), words.locale);
  return (
    <PlainPage
      step="press"
      kicker={said().kicker}
      title={said().title}
      actions={
        <>
          <BigButton act="leave-press" isWay onPress={props.onBack}>
            {words.general.back}
          </BigButton>
          <BigButton act="press-anew" isWay isDisabled={choice().presses === 1} onPress={() => choose({})}>
            {said().anew}
          </BigButton>
          <BigButton
            kind="primary"
            act="press-again"
            isWay
            isDisabled={isEnough()}
            onPress={() => choose({ presses: choice().presses + 1 })}
          >
            {isEnough() ? said().noMore : said().again}
          </BigButton>
        </>
      }
    >
      <div class="press-page">
        <Show when={view()} fallback={<p role="status">{said().reckoning}</p>}>
          {(seen) => <PressSeen view={seen()} isOld={seen().choice !== choice()} units={units()} />}
        </Show>
        <div class="press-choices">
          <OneOf
            question="section"
            ask={said().asks.section}
            options={ASSUMED_SECTIONS_MM.map((mm, at) => ({
              value: mm,
              name: said().sections[at] ?? '',
              also: writeMm(mm),
            }))}
            chosen={choice().thicknessMm}
            onChoose={(thicknessMm) => choose({ thicknessMm })}
          />
          <OneOf
            question="wetness"
            ask={said().asks.wetness}
            options={wetnesses
              .map((wetness) => ({ value: wetness, name: said().wetness[wetness] }))
              .reverse()}
            chosen={choice().wetness}
            onChoose={(wetness) => choose({ wetness })}
          />
          <OneOf
            question="onPlace"
            ask={said().asks.onPlace}
            options={ASSUMED_ON_PLACE_S.map((seconds) => ({
              value: seconds,
              name: writeS(seconds),
            }))}
            chosen={choice().contactS}
            onChoose={(contactS) => choose({ contactS })}
          />
          <SettingDial plateC={choice().plateC} units={units()} onSet={(plateC) => choose({ plateC })} />
          <p class="press-estimate">
            <WhyPress boilingC={boilingC()} units={units()} />
            <span>{said().estimate}</span>
          </p>
        </div>
      </div>
    </PlainPage>
  );
}
