/** What is recorded of hair that broke: it snapped, and no light pull was left to stretch it. */
export const brokenAnswers = { fibre: 'broken', stretch: 'snaps', wentPast30: 'no' } as const;
