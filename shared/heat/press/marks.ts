import { findMark } from '../thresholds';

/**
 * Where each figure of the pressed section comes from, for whoever asks "why?" beside it: one of the four marks.
 * Checked by tests/evidence/marks.test.ts.
 */
export const pressMarks = {
  conduction: 'published: Carslaw & Jaeger, Conduction of Heat in Solids, 1959, § 3.11',
  boilingPoint: 'published: U.S. Standard Atmosphere 1976 with IAPWS R7-97(2012)',
  works:
    'published: Dussaud, Rana, Lam, J. Cosmet. Sci. 64:119–131, 2013 (ten cycles at this heat of the hair did little; that a press works from just above it is assumed)',
  poresRiseFast: findMark('poresRiseFast'),
  cortexSoftens: findMark('cortexSoftens'),
  heats:
    'from memory: heat capacity and density of keratin fibres; heat capacity and latent heat of water, steam tables',
  water: 'assumed: how much water hair holds that feels dry, damp or wet',
  bundle:
    'assumed: how tightly hair lies under the plates, how well it conducts, and how well the plates touch it',
  pause: 'assumed: the hand is back on the same place after so long, and nothing cools meanwhile',
  sections: 'assumed: how thick a section lies when it is pressed',
  structure:
    'assumed: nearest to it is a loss of break stress twice as large after a water-based spray as after an ethanol-based one (Christian, Winsey, Whatmough, Cornwell, J. Cosmet. Sci. 62:15–27, 2011, Table III; iron temperature not seen)',
} as const;

export type PressFigure = keyof typeof pressMarks;
