/** Where on the head a strand stands for and a bowl goes: the glossary's zones, oldest hair last. */
export const zones = ['roots', 'lengths', 'ends'] as const;
export type Zone = (typeof zones)[number];

/** Something kept for each zone. */
export type ByZone<T> = Readonly<Record<Zone, T>>;

/** The same value for each zone. */
export const forEachZone = <T>(value: T): ByZone<T> => ({ roots: value, lengths: value, ends: value });
