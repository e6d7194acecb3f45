/**
 * Where each figure comes from, for whoever asks "why?" beside it: one of the four marks, or exact where it is geometry.
 * What is assumed in a figure whose rate is published is named behind it.
 * Checked by tests/evidence/marks.test.ts: each begins with its mark.
 */
export const heatMarks = {
  ageWeeks:
    'published: Loussouarn, El Rawadi, Genain, Int. J. Dermatol. 44(Suppl 1):6–9, 2005, Table 1 (367 ± 56 µm a day, one standard deviation of one of three populations)',
  ironMin: 'common practice, no source: a minute a section, three days a week, two years = 312 minutes',
  boilEquivalents: 'common practice, no source: half an hour in boiling water sets a curl for good',
  contactMin:
    'exact: the width of the plate along the strand ÷ the length ironed; the width is assumed unless told',
  hairTemperature: 'assumed: no published figure says how much cooler hair is than the plate',
  helixLeft:
    'published: Thermochim. Acta 661:78–83, 2018 (abstract), under a 200 °C iron; each bleach: Wortmann et al., J. Cosmet. Sci. 53:219–228, 2002. Other temperatures (from Dussaud et al., J. Cosmet. Sci. 64:119–131, 2013) and water: assumed',
  matrixLeft:
    'published: Thermochim. Acta 661:78–83, 2018 (abstract), under a 200 °C iron. Other temperatures: assumed',
  tryptophanLeft:
    'published: McMullen & Jachowicz, J. Cosmet. Sci. 49:245–256, 1998, pp. 248–249, under irons of 132 and 152 °C. Carried on by the same energy elsewhere: assumed',
  bleaches: 'assumed: told, but for when and where each went, as far as that was not told',
  boilingPoint: 'published: U.S. Standard Atmosphere 1976 with IAPWS R7-97(2012)',
  whereToSnip: 'common practice, no source: where it was hottest, wettest and oldest, not the nape',
} as const;

export type HeatFigure = keyof typeof heatMarks;
