import { createSignal, Show } from 'solid-js';
import * as v from 'valibot';
import { defaultSettings, settingsSchema } from '../../../shared/records/settings';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { DemoInUse } from '../../station/demo/createDemo';
import type { StationState } from '../../station/stationState';
import './window.css';

/** As the schema reads them, whose order of members an edition keeps. */
const newSettings = JSON.stringify(v.parse(settingsSchema, defaultSettings));

/** Is nothing set but, perhaps, the language? */
const isAsNew = ({ id, settings }: StationState['settings']): boolean =>
  id === 0 || JSON.stringify({ ...settings, locale: defaultSettings.locale }) === newSettings;

/** Has nobody ever done anything here, but chosen a language? Then, and only then, an invented salon may be looked at. */
export const isUntouched = ({
  mode,
  settings,
  open,
  closed,
  months,
  skinTests,
  notices,
}: StationState): boolean =>
  mode === 'writing' &&
  isAsNew(settings) &&
  open.size === 0 &&
  closed.length === 0 &&
  months.all === 0 &&
  skinTests.length === 0 &&
  notices.length === 0;

/** An empty station offers to show itself with people and products that were made up. */
export function DemoOffer(props: { readonly demo: DemoInUse }) {
  const words = useWords();
  const [state, setState] = createSignal<'offered' | 'loading' | 'failed'>('offered');
  const load = async () => {
    setState('loading');
    setState((await props.demo.load()) ? 'loading' : 'failed');
  };
  return (
    <div class="demo-offer">
      <BigButton act="load-demo" isDisabled={state() === 'loading'} onPress={() => void load()}>
        {state() === 'loading' ? words.demo.loading : words.demo.offer}
      </BigButton>
      <Show when={state() !== 'loading'}>
        <p role={state() === 'failed' ? 'alert' : undefined}>
          {state() === 'failed' ? words.demo.failed : words.demo.offerHint}
        </p>
      </Show>
    </div>
  );
}
