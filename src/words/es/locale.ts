/** The language of this folder. */
export const locale = 'es' as const;
