import { createMemo, createSignal, For, Show } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { PlainPage } from '../../parts/PlainPage';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { StationInUse } from '../../station/createStation';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { usePass } from '../pin/pinInUse';
import type { Who } from '../who';
import { useLearning } from './learningInUse';
import { TaughtFindings } from './TaughtFindings';
import './taught.css';
import { viewTaught } from './viewTaught';

/** What this station's own strands taught, did it come, and one tap back to what was assumed; and again. */
export function WhatTaught(props: {
  readonly station: Pick<StationInUse, 'state' | 'saveSettings'>;
  readonly who: Who;
  readonly onDay: () => void;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const said = () => words.taught;
  const learning = useLearning();
  const pass = usePass();
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const settings = () => props.station.state().settings.settings;
  const taught = () => learning?.taught() ?? { kind: 'demo' as const };
  const view = createMemo(() => {
    const now = taught();
    return now.kind === 'taught' ? viewTaught(now.what, settings().learns) : null;
  });
  const set = (learns: boolean) => props.who.asSomebody(() => pass(() => void save(learns)));
  const save = async (learns: boolean) => {
    const saved = await props.station.saveSettings(props.who.by(), { ...settings(), learns });
    setRefusal(saved.ok ? null : saved.error);
    if (saved.ok && learns) learning?.learnAgain();
  };
  /** Where it was not turned off, it failed: it is tried once more. */
  const learnAgain = () => (settings().learns ? learning?.learnAgain() : set(true));
  const some = () => {
    const now = view();
    return now !== null && now.strands > 0 ? now : null;
  };
  return (
    <PlainPage
      step="taught"
      kicker={said().kicker}
      title={said().title}
      actions={
        <>
          <BigButton act="bar" isWay onPress={props.onBar}>
            {words.general.bar}
          </BigButton>
          <BigButton act="day" isWay onPress={props.onDay}>
            {words.bar.day}
          </BigButton>
          <Show
            when={settings().learns && taught().kind !== 'failed'}
            fallback={
              <BigButton kind="primary" act="learn-again" onPress={learnAgain}>
                {said().learnAgain}
              </BigButton>
            }
          >
            <BigButton act="back-to-assumed" isDisabled={some() === null} onPress={() => set(false)}>
              {said().backToAssumed}
            </BigButton>
          </Show>
        </>
      }
    >
      <Refusal refusal={refusal()} />
      <Show
        when={some()}
        fallback={
          <section class="panel taught-panel" data-taught={taught().kind}>
            <For each={said().nothing[taught().kind]}>
              {(line, at) => (at() === 0 ? <h2 class="big-word">{line}</h2> : <p>{line}</p>)}
            </For>
            <p class="soft">{settings().learns ? said().shownOnly : said().isOff}</p>
          </section>
        }
      >
        {(now) => <TaughtFindings view={now()} learns={settings().learns} units={settings().units} />}
      </Show>
    </PlainPage>
  );
}
