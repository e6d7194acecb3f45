import type { settingsForm } from '../../../shared/records/forms/settings';

type Name = keyof typeof settingsForm;

/**
 * The questions of the settings by topic: one tile, one page each, in the order of the tiles. Each question stands in one
 * of them: checked in tests/src/screens/settings/settingsScreen.test.tsx.
 */
export const settingsSections = {
  salon: ['locale', 'chairs', 'altitude', 'contact', 'spoken'],
  staff: ['figuresByStylist', 'staff'],
  shelf: ['shelf'],
  units: ['temperature', 'mass', 'length', 'scaleStepG'],
  skinTest: ['skinTestWaitH', 'skinTestLapsesDays', 'skinTestFor'],
  keeping: ['keeps', 'keepMonths', 'erasesByItself'],
  rules: ['hasAgeLine', 'ageLine', 'ceilingPercent', 'isAnyReactionAbsolute', 'carried'],
} as const satisfies Readonly<Record<string, readonly Name[]>>;

export type SettingsSection = keyof typeof settingsSections;

const sections = Object.keys(settingsSections) as readonly SettingsSection[];

/** Is this page one topic of the settings? */
export const isSection = (at: string): at is SettingsSection => at in settingsSections;

/** On which page does this question stand? A path of a list, as "staff.2.name", by its first part. */
export function findSection(path: string): SettingsSection | null {
  const [name] = path.split('.');
  return sections.find((section) => settingsSections[section].some((each) => each === name)) ?? null;
}

/** The part of a form or its words that stands on this page. */
export const pickSection = <T extends Readonly<Record<string, unknown>>>(
  of: T,
  section: SettingsSection,
): Partial<T> => Object.fromEntries(settingsSections[section].map((name) => [name, of[name]])) as Partial<T>;
