import { createMemo, createSignal, Show } from 'solid-js';
import type { FieldRefusal } from '../../../shared/records/readForm';
import { readForm } from '../../../shared/records/readForm';
import type { Settings } from '../../../shared/records/settings';
import type { Result } from '../../../shared/result';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { listMistakes } from '../../parts/form/draft';
import { FormFields } from '../../parts/form/FormFields';
import { PageActions } from '../../parts/PageActions';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { SubmitRefusal } from '../../station/submitRefusal';
import type { TabletInUse } from '../../tablet/createTablet';
import { findTabletLack } from '../alarm/TabletNote';
import { TabletPanel } from '../alarm/TabletPanel';
import '../day/day.css';
import { createKeptDraft } from '../keptDraft';
import '../layout.css';
import { showFirstRefused } from '../showFirstRefused';
import { SettingsTiles } from './SettingsTiles';
import './settings.css';
import { draftSettings, findSettingsForm, readSettings } from './settingsDraft';
import { findSection, pickSection, type SettingsSection } from './settingsSections';
import { findSettingsWords } from './settingsWords';

/** How this salon is set up. What is saved becomes a new edition; logs keep the one they were judged under. */
export function SettingsScreen(props: {
  readonly inForce: Settings;
  readonly nowMs: number;
  readonly save: (settings: Settings) => Promise<Result<void, SubmitRefusal>>;
  readonly onBar: () => void;
  readonly tablet?: TabletInUse | undefined;
}) {
  const words = useWords();
  const said = () => words.settings;
  const draft = createKeptDraft(
    `settings/${JSON.stringify(props.inForce)}`,
    draftSettings(props.inForce),
    props.inForce,
  );
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const [hasTried, setHasTried] = createSignal(false);
  const [isSaved, setIsSaved] = createSignal(false);
  const form = createMemo(() => findSettingsForm(props.inForce.units));
  const context = () => ({ units: props.inForce.units, hasAgeLine: false, nowMs: props.nowMs });
  const refusals = (): readonly FieldRefusal[] => {
    if (!hasTried()) return listMistakes(form(), draft.raw(), context());
    const read = readForm(form(), draft.raw(), context());
    return read.ok ? [] : read.error;
  };
  const asked = createMemo(() => findSettingsWords(words, props.inForce.units));
  const [section, setSection] = createSignal<SettingsSection | 'tablet' | null>(null);
  const formHere = createMemo(() => {
    const here = section();
    return here === null || here === 'tablet' ? null : pickSection(form(), here);
  });
  const title = () => {
    const here = section();
    if (here === null) return said().title;
    return said().sectionTitle(here === 'tablet' ? words.alarm.title : said().sections[here]);
  };
  const sayTablet = () => {
    if (props.tablet === undefined) return null;
    return findTabletLack(props.tablet)?.(words) ?? words.alarm.isReady;
  };
  const isChanged = () => JSON.stringify(draft.raw()) !== JSON.stringify(draftSettings(props.inForce));

  async function save(): Promise<void> {
    setHasTried(true);
    const read = readSettings(draft.raw(), props.inForce, props.nowMs);
    if (!read.ok) {
      setRefusal({ kind: 'fields', fields: read.error });
      const [first] = read.error;
      setSection(first === undefined ? section() : findSection(first.path));
      showFirstRefused();
      return;
    }
    const taken = await props.save(read.value);
    setRefusal(taken.ok ? null : taken.error);
    if (!taken.ok) return;
    draft.begin(draftSettings(props.inForce));
    setHasTried(false);
    setIsSaved(true);
  }

  return (
    <main class="day-page" data-step="settings">
      <header>
        <h1>{title()}</h1>
      </header>
      <div class="day-content settings-form">
        <Show when={section() === null}>
          <SettingsTiles
            form={form()}
            asked={asked()}
            raw={draft.raw()}
            units={props.inForce.units}
            tablet={sayTablet()}
            onOpen={setSection}
          />
          <Caution kind="plain">
            <p>{said().note}</p>
          </Caution>
        </Show>
        <Show when={formHere()} keyed>
          {(here) => (
            <FormFields
              form={here}
              words={asked()}
              draft={draft}
              onChange={() => {
                setRefusal(null);
                setIsSaved(false);
              }}
              refusals={refusals()}
              units={props.inForce.units}
              hasAgeLine={false}
              nowMs={props.nowMs}
              picks={picks}
            />
          )}
        </Show>
        <Show when={section() === 'tablet' && props.tablet}>
          {(tablet) => <TabletPanel tablet={tablet()} />}
        </Show>
        <Refusal refusal={refusal()} />
      </div>
      <PageActions>
        <p class="soft" aria-live="polite">
          <Show when={isSaved()} fallback={isChanged() ? said().unsaved : ''}>
            {said().saved}
          </Show>
        </p>
        <BigButton act="bar" isWay onPress={props.onBar}>
          {words.general.bar}
        </BigButton>
        <Show when={section() !== null}>
          <BigButton act="all-settings" isWay onPress={() => setSection(null)}>
            {said().all}
          </BigButton>
        </Show>
        <BigButton kind="primary" act="save-settings" onPress={() => void save()}>
          {said().save}
        </BigButton>
      </PageActions>
    </main>
  );
}

const picks = {
  chairs: ['4', '6', '8'],
  ageLine: ['16', '18'],
  skinTestWaitH: ['24', '48', '72'],
  skinTestLapsesDays: ['7', '28', '90'],
};
