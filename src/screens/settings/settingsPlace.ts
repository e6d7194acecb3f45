import { createSignal } from 'solid-js';
import { findSection, type SettingsSection } from './settingsSections';

/** Which page of the settings: all of them, one topic, the ruler of this tablet, files, or one spray of the shelf by its row. */
export type SettingsPage =
  | {
      readonly at:
        | 'all'
        | 'tablet'
        | 'ruler'
        | 'backup'
        | 'records'
        | 'others'
        | 'practice'
        | 'diagnosis'
        | SettingsSection;
    }
  | { readonly at: 'spray' | 'trial'; readonly row: number };

const rowPath = /^shelf\.(\d+)\.(?:ingredients|makerSaysUpToC|trial)/;

/** On which page does what is refused here stand? */
function findPage(path: string): SettingsPage {
  const row = rowPath.exec(path)?.[1];
  return row === undefined ? { at: findSection(path) ?? 'all' } : { at: 'spray', row: Number(row) };
}

/** Where in the settings is this tablet, and the ways between their pages. */
export function createSettingsPlace() {
  const [page, setPage] = createSignal<SettingsPage>({ at: 'all' });
  return {
    page,
    toAll: () => setPage({ at: 'all' }),
    toRuler: () => setPage({ at: 'ruler' }),
    toSection: (
      at: SettingsSection | 'tablet' | 'backup' | 'records' | 'others' | 'practice' | 'diagnosis',
    ) => setPage({ at }),
    toSpray: (row: number) => setPage({ at: 'spray', row }),
    toTrial: (row: number) => setPage({ at: 'trial', row }),
    toRefused: (path: string) => setPage(findPage(path)),
    /** The row of the spray whose page this is; null elsewhere. */
    row: (at: 'spray' | 'trial'): number | null => {
      const here = page();
      return here.at === at && 'row' in here ? here.row : null;
    },
  };
}
