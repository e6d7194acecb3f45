import { Show } from 'solid-js';
import type { Settings } from '../../../shared/records/settings';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import type { UndoInUse } from './editing';
import { draftSettings } from './settingsDraft';
import { type SettingsSection, settingsSections } from './settingsSections';

/** Which topics are other in this edition? Both as they would stand in the fields, in the same units. */
export function listChangedTopics(before: Settings, now: Settings): readonly SettingsSection[] {
  const then = { ...draftSettings({ ...before, units: now.units }), ...before.units };
  const today = { ...draftSettings(now), ...now.units };
  const isOther = (name: string) =>
    JSON.stringify(then[name as keyof typeof then]) !== JSON.stringify(today[name as keyof typeof today]);
  return (Object.keys(settingsSections) as readonly SettingsSection[]).filter((section) =>
    settingsSections[section].some(isOther),
  );
}

/** What was saved last, and one tap that puts back what stood before: not while something is typed and not saved. */
export function UndoSettings(props: {
  readonly undo: UndoInUse | undefined;
  readonly inForce: Settings;
  readonly isShown: boolean;
  readonly isChanged: boolean;
  readonly onUndo: () => void;
}) {
  const words = useWords();
  const said = () => words.settings;
  const sayLast = ({ before, by }: UndoInUse) =>
    said().undo.last(
      listChangedTopics(before, props.inForce)
        .map((topic) => said().sections[topic])
        .join(', '),
      by,
    );
  return (
    <Show when={props.isShown && !props.isChanged && props.undo}>
      {(undo) => (
        <BigButton act="undo-settings" onPress={props.onUndo}>
          <span class="undo-settings">
            {said().undo.undo}
            <small>{sayLast(undo())}</small>
          </span>
        </BigButton>
      )}
    </Show>
  );
}
