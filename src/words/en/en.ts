import { clock } from './clock';
import { clientWords } from './forms/client';
import { feelHairWords } from './forms/feelHair';
import { heatSprayWords } from './forms/heatSpray';
import { hotToolsWords } from './forms/hotTools';
import { general } from './general';
import { moments } from './moments';
import { rail } from './rail';
import { refusals } from './refusals';
import { rules } from './rules';

/** English, all topics. One line a topic. */
export const en = {
  locale: 'en' as const,
  general,
  moments,
  rail,
  clock,
  refusals,
  rules,
  asked: {
    client: clientWords,
    hotTools: hotToolsWords,
    feelHair: feelHairWords,
    heatSpray: heatSprayWords,
  },
};
