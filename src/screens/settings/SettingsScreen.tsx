import { createEffect, createMemo, type JSX, Match, on, Show, Switch } from 'solid-js';
import { BigButton } from '../../parts/BigButton';
import { FormFields } from '../../parts/form/FormFields';
import { PageActions } from '../../parts/PageActions';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import type { TabletInUse } from '../../tablet/createTablet';
import { findTabletLack } from '../alarm/TabletNote';
import { TabletPanel } from '../alarm/TabletPanel';
import '../day/day.css';
import '../layout.css';
import { sayOthers } from '../../words/sayOthers';
import { PinPanel } from '../pin/PinPanel';
import { usePin } from '../pin/pinInUse';
import { createEntering, type EnteringPractice, EnterPractice } from '../practice/EnterPractice';
import { RulerPage } from '../ruler/RulerPage';
import { RulerPanel } from '../ruler/RulerPanel';
import { useRuler } from '../ruler/rulerInUse';
import { showFirstRefused } from '../showFirstRefused';
import { StillReading } from '../window/StillReading';
import { Backup, type BackupInUse } from './Backup';
import { BringRecords, type RecordsInUse } from './BringRecords';
import { createEditing, type SettingsInUse } from './editing';
import { type OthersInUse, OthersPage } from './OthersPage';
import { SettingsTiles } from './SettingsTiles';
import { SprayPage } from './SprayPage';
import { SprayWay } from './SprayWay';
import './settings.css';
import { askInRows } from './settingsDraft';
import { createSettingsPlace } from './settingsPlace';
import { isSection, pickSection, type SettingsSection } from './settingsSections';
import { findSettingsWords } from './settingsWords';
import { nameSpray } from './sprayRow';
import { UndoSettings } from './UndoSettings';
import { WarmthTrial } from './WarmthTrial';

/** How this salon is set up. What is saved becomes a new edition; logs keep the one they were judged under. */
export function SettingsScreen(
  props: SettingsInUse & {
    readonly onBar: () => void;
    readonly tablet?: TabletInUse | undefined;
    readonly backup?: (BackupInUse & RecordsInUse) | undefined;
    /** Files wait until all that closed earlier is read. */
    readonly months?: StationState['months'] | undefined;
    readonly sharing?: OthersInUse | undefined;
    readonly practice?: EnteringPractice | undefined;
    /** How this tablet is, drawn where it can be read. */
    readonly diagnosis?: (() => JSX.Element) | undefined;
  },
) {
  const words = useWords();
  const pin = usePin();
  const said = () => words.settings;
  const editing = createEditing(props);
  const place = createSettingsPlace();
  let content: HTMLDivElement | undefined;
  /** A page is read from its beginning. */
  createEffect(on(place.page, () => content?.scrollTo({ top: 0 })));
  const asked = createMemo(() => findSettingsWords(words, props.inForce.units));
  const section = createMemo((): SettingsSection | null => {
    const { at } = place.page();
    return isSection(at) ? at : null;
  });
  const formHere = createMemo(() => {
    const here = section();
    return here === null ? null : pickSection(askInRows(editing.form()), here);
  });
  /** Files come and go there, and nothing is to be kept. */
  const monthsToRead = () => (props.months && props.months.read < props.months.all ? props.months : null);
  const isOfFiles = () => ['backup', 'records', 'others', 'diagnosis'].includes(place.page().at);
  const others = () => props.sharing?.others() ?? null;
  const sayOthersHere = () => {
    const here = others();
    return here === null ? null : sayOthers(here, words, props.inForce.units, props.nowMs);
  };
  const entering = createEntering(() => props.practice);
  const isOfPractice = () => place.page().at === 'practice';
  const spray = () => place.row('spray');
  const nameRow = (row: number) => nameSpray(editing.row(row), words);
  const title = () => {
    const row = spray();
    const here = section();
    if (row !== null) return said().sectionTitle(nameRow(row));
    if (here !== null) return said().sectionTitle(said().sections[here]);
    const { at } = place.page();
    if (at === 'backup') return said().sectionTitle(said().backup.title);
    if (at === 'records') return said().sectionTitle(words.records.title);
    if (at === 'others') return said().sectionTitle(words.others.title);
    if (at === 'diagnosis') return said().sectionTitle(words.diagnosis.title);
    if (at === 'practice') return words.practice.enterTitle;
    return at === 'tablet' ? said().sectionTitle(words.tablet.title) : said().title;
  };
  const mayShare = () => others()?.kind === 'inStep' || others()?.kind === 'apart';
  const sayTablet = () => {
    if (props.tablet === undefined) return null;
    return findTabletLack(props.tablet)?.(words) ?? words.tablet.isReady;
  };

  /** Whether it is saved; while there is nothing to say of that, what comes before every setting. */
  const sayState = () => {
    if (editing.isSaved()) return said().saved;
    if (editing.isUndone()) return said().undo.done;
    if (editing.isChanged()) return said().unsaved;
    return place.page().at === 'all' ? said().note : '';
  };

  async function save(): Promise<void> {
    const refused = await editing.save();
    if (refused === undefined) return;
    place.toRefused(refused.path);
    showFirstRefused();
  }

  const renderSettings = (): JSX.Element => (
    <main class="day-page" data-step="settings">
      <header>
        <h1>{title()}</h1>
      </header>
      <div class="day-content settings-form" ref={content}>
        <Switch>
          <Match when={place.page().at === 'all'}>
            <SettingsTiles
              form={editing.form()}
              asked={asked()}
              raw={editing.draft.raw()}
              units={props.inForce.units}
              tablet={sayTablet()}
              hasBackup={props.backup !== undefined}
              others={sayOthersHere()}
              hasPractice={props.practice !== undefined}
              hasDiagnosis={props.diagnosis !== undefined}
              onOpen={place.toSection}
            />
          </Match>
          <Match when={place.page().at === 'tablet' && props.tablet}>
            {(tablet) => (
              <div class="columns">
                <TabletPanel tablet={tablet()} />
                <RulerPanel units={props.inForce.units} onSet={place.toRuler} />
              </div>
            )}
          </Match>
          <Match when={place.page().at === 'diagnosis' && props.diagnosis}>{(draw) => draw()()}</Match>
          <Match when={isOfFiles() && monthsToRead()}>{(months) => <StillReading months={months()} />}</Match>
          <Match when={place.page().at === 'backup' && props.backup}>
            {(backup) => <Backup backup={backup()} units={props.inForce.units} nowMs={props.nowMs} />}
          </Match>
          <Match when={place.page().at === 'records' && props.backup}>
            {(backup) => <BringRecords bring={backup().bringInRecords} units={props.inForce.units} />}
          </Match>
          <Match when={place.page().at === 'others' && others()}>
            {(here) => <OthersPage others={here()} units={props.inForce.units} nowMs={props.nowMs} />}
          </Match>
          <Match when={isOfPractice() && props.practice}>
            {(practice) => (
              <EnterPractice notNow={practice().notNow()} hasFailed={entering.state() === 'failed'} />
            )}
          </Match>
          <Match when={spray() !== null}>
            <SprayPage
              editing={editing}
              row={spray() ?? 0}
              units={props.inForce.units}
              nowMs={props.nowMs}
              onTrial={() => place.toTrial(spray() ?? 0)}
            />
          </Match>
          <Match when={formHere()} keyed>
            {(here) => (
              <FormFields
                form={here}
                words={asked()}
                draft={editing.draft}
                onChange={editing.touch}
                refusals={editing.refusals()}
                units={props.inForce.units}
                hasAgeLine={false}
                nowMs={props.nowMs}
                picks={picks}
                renderInRow={(row, index) => <SprayWay row={row()} onOpen={() => place.toSpray(index)} />}
              />
            )}
          </Match>
        </Switch>
        <Show when={place.page().at === 'cover' && pin}>
          {(here) => <PinPanel pin={here()} units={props.inForce.units} />}
        </Show>
        <Refusal refusal={editing.refusal()} />
      </div>
      <PageActions>
        <p class="soft" aria-live="polite">
          {sayState()}
        </p>
        <BigButton act="bar" isWay onPress={props.onBar}>
          {words.general.bar}
        </BigButton>
        <Show when={section() !== null || place.page().at === 'tablet' || isOfFiles() || isOfPractice()}>
          <BigButton act="all-settings" isWay onPress={place.toAll}>
            {said().all}
          </BigButton>
        </Show>
        <Show when={spray() !== null}>
          <BigButton act="to-shelf" isWay onPress={() => place.toSection('shelf')}>
            {said().toShelf}
          </BigButton>
        </Show>
        <Show when={place.page().at === 'records'}>
          <BigButton act="to-backup" isWay onPress={() => place.toSection('backup')}>
            {said().backup.title}
          </BigButton>
        </Show>
        <Show when={place.page().at === 'backup'}>
          <BigButton act="to-records" isWay onPress={() => place.toSection('records')}>
            {words.records.title}
          </BigButton>
        </Show>
        <Show when={place.page().at === 'others' && mayShare()}>
          <BigButton kind="primary" act="share-now" onPress={() => props.sharing?.shareNow()}>
            {words.others.now}
          </BigButton>
        </Show>
        <Show when={isOfPractice() && props.practice}>
          {(practice) => (
            <BigButton
              kind="primary"
              act="enter-practice"
              isDisabled={practice().notNow() !== null || entering.state() === 'entering'}
              onPress={() => void entering.go()}
            >
              {entering.state() === 'entering' ? words.practice.entering : words.practice.enter}
            </BigButton>
          )}
        </Show>
        <UndoSettings
          undo={props.undo}
          inForce={props.inForce}
          isShown={place.page().at === 'all' || editing.isSaved() || editing.isUndone()}
          isChanged={editing.isChanged()}
          onUndo={() => void editing.undo()}
        />
        <Show when={!isOfFiles() && !isOfPractice()}>
          <BigButton kind="primary" act="save-settings" onPress={() => void save()}>
            {said().save}
          </BigButton>
        </Show>
      </PageActions>
    </main>
  );

  const ruler = useRuler();
  return (
    <Switch fallback={renderSettings()}>
      <Match when={place.page().at === 'ruler' && ruler}>
        {(here) => (
          <RulerPage ruler={here()} units={props.inForce.units} onLeave={() => place.toSection('tablet')} />
        )}
      </Match>
      <Match when={place.row('trial') !== null}>
        <WarmthTrial
          spray={nameRow(place.row('trial') ?? 0)}
          units={props.inForce.units}
          nowMs={props.nowMs}
          onBack={() => place.toSpray(place.row('trial') ?? 0)}
          onKeep={(trial) => {
            const row = place.row('trial') ?? 0;
            editing.changeRow(row, 'trial', [trial]);
            place.toSpray(row);
          }}
        />
      </Match>
    </Switch>
  );
}

const picks = {
  chairs: ['4', '6', '8'],
  keepMonths: ['12', '36', '72', '120'],
  ageLine: ['16', '18'],
  ceilingPercent: ['6', '9', '12'],
  skinTestWaitH: ['24', '48', '72'],
  skinTestLapsesDays: ['7', '28', '90'],
};
