import { createMemo, createSignal, untrack } from 'solid-js';
import type { FieldRefusal, Raw, RawForm } from '../../../shared/records/readForm';
import type { Settings } from '../../../shared/records/settings';
import type { Result } from '../../../shared/result';
import { listMistakes } from '../../parts/form/draft';
import { readRows } from '../../parts/form/sheet/places';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { createKeptDraft } from '../keptDraft';
import { draftSettings, findSettingsForm, readAsStation, readSettings } from './settingsDraft';

/** What the settings screen is given. */
export interface SettingsInUse {
  readonly inForce: Settings;
  readonly nowMs: number;
  readonly save: (settings: Settings) => Promise<Result<void, SubmitRefusal>>;
  /** The edition before the one in force, and the way back to it; lacking where there is none. */
  readonly undo?: UndoInUse | undefined;
}

export interface UndoInUse {
  readonly before: Settings;
  /** Who saved the edition in force; empty where a station started with it. */
  readonly by: string;
  readonly run: () => Promise<Result<void, SubmitRefusal>>;
}

/** The settings while somebody changes them: one draft over all their pages, kept until it is saved as one edition. */
export function createEditing(props: SettingsInUse) {
  const draft = createKeptDraft(
    `settings/${JSON.stringify(props.inForce)}`,
    draftSettings(props.inForce),
    props.inForce,
  );
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const [hasTried, setHasTried] = createSignal(false);
  const [isSaved, setIsSaved] = createSignal(false);
  const [isUndone, setIsUndone] = createSignal(false);
  const form = createMemo(() => findSettingsForm(props.inForce.units));
  /** Not read anew each second: a list may be long, and what was stamped by then is looked at when it is saved. */
  const refusals = createMemo((): readonly FieldRefusal[] => {
    const nowMs = untrack(() => props.nowMs);
    if (!hasTried()) return listMistakes(form(), draft.raw(), readAsStation(props.inForce, nowMs));
    const read = readSettings(draft.raw(), props.inForce, nowMs);
    return read.ok ? [] : read.error;
  });
  const touch = () => {
    setRefusal(null);
    setIsSaved(false);
    setIsUndone(false);
  };
  const rows = () => readRows(draft.raw().shelf);
  return {
    draft,
    form,
    refusal,
    refusals,
    isSaved,
    isUndone,
    touch,
    isChanged: () => JSON.stringify(draft.raw()) !== JSON.stringify(draftSettings(props.inForce)),
    /** One row of the shelf as it stands in its fields. */
    row: (index: number): RawForm => rows()[index] ?? {},
    /** The last trial of this row is among those in force, or there is none. */
    isTrialSaved: (index: number): boolean => {
      const [tried] = readRows(rows()[index]?.trial);
      return tried === undefined || props.inForce.shelf.some(({ trial }) => trial?.atMs === tried.atMs);
    },
    changeRow: (index: number, name: string, value: Raw) => {
      const change = (row: RawForm, at: number) => (at === index ? { ...row, [name]: value } : row);
      draft.set('shelf', rows().map(change));
      touch();
    },
    /** The edition before holds again, as a new one. */
    undo: async (): Promise<void> => {
      touch();
      const taken = await props.undo?.run();
      if (taken === undefined) return;
      setRefusal(taken.ok ? null : taken.error);
      if (!taken.ok) return;
      draft.begin(draftSettings(props.inForce));
      setHasTried(false);
      setIsUndone(true);
    },
    /** What is refused at a field is answered, first things first; nothing once it is written or not written at all. */
    save: async (): Promise<FieldRefusal | undefined> => {
      setHasTried(true);
      const read = readSettings(draft.raw(), props.inForce, props.nowMs);
      if (!read.ok) {
        setRefusal({ kind: 'fields', fields: read.error });
        return read.error[0];
      }
      const taken = await props.save(read.value);
      setRefusal(taken.ok ? null : taken.error);
      if (!taken.ok) return undefined;
      draft.begin(draftSettings(props.inForce));
      setHasTried(false);
      setIsUndone(false);
      setIsSaved(true);
      return undefined;
    },
  };
}

export type Editing = ReturnType<typeof createEditing>;
