import { alarm } from '../en/alarm';
import { asking } from '../en/asking';
import { bar } from '../en/bar';
import { bench } from '../en/bench';
import { cautionList } from '../en/cautionList';
import { cautions } from '../en/cautions';
import { chance } from '../en/chance';
import { clock } from '../en/clock';
import { clockDoubt } from '../en/clockDoubt';
import { colourOn } from '../en/colourOn';
import { day } from '../en/day';
import { decision } from '../en/decision';
import { demo } from '../en/demo';
import { ended } from '../en/ended';
import { finish } from '../en/finish';
import { clientWords } from '../en/forms/client';
import { feelHairWords } from '../en/forms/feelHair';
import { heatSprayWords } from '../en/forms/heatSpray';
import { hotToolsWords } from '../en/forms/hotTools';
import { general } from '../en/general';
import { hair } from '../en/hair';
import { handOver } from '../en/handOver';
import { heat } from '../en/heat';
import { ingredients } from '../en/ingredients';
import { kept } from '../en/kept';
import { lastVisit } from '../en/lastVisit';
import { leaving } from '../en/leaving';
import { mix } from '../en/mix';
import { moments } from '../en/moments';
import { nothingNew } from '../en/nothingNew';
import { notices } from '../en/notices';
import { others } from '../en/others';
import { practice } from '../en/practice';
import { press } from '../en/press';
import { rail } from '../en/rail';
import { reaction } from '../en/reaction';
import { records } from '../en/records';
import { refusals } from '../en/refusals';
import { ruler } from '../en/ruler';
import { rules } from '../en/rules';
import { settings } from '../en/settings';
import { sheet } from '../en/sheet';
import { skinTest } from '../en/skinTest';
import { skinTests } from '../en/skinTests';
import { spray } from '../en/spray';
import { start } from '../en/start';
import { strandCard } from '../en/strandCard';
import { strandTest } from '../en/strandTest';
import { tablet } from '../en/tablet';
import { taught } from '../en/taught';
import { toner } from '../en/toner';
import { trainer } from '../en/trainer';
import { warmthTrial } from '../en/warmthTrial';
import { whatHappened } from '../en/whatHappened';
import { windowPart } from '../en/window';
import type { Words } from '../words';
import { locale } from './locale';

/** Spanish, all topics. One line a topic; the few that still speak English are named by their import. */
export const es: Words = {
  locale,
  general,
  moments,
  rail,
  chance,
  clock,
  windowPart,
  start,
  nothingNew,
  notices,
  kept,
  leaving,
  bar,
  bench,
  alarm,
  cautionList,
  cautions,
  skinTest,
  skinTests,
  lastVisit,
  handOver,
  hair,
  heat,
  ingredients,
  asking,
  refusals,
  ruler,
  rules,
  clockDoubt,
  colourOn,
  day,
  decision,
  demo,
  ended,
  finish,
  mix,
  others,
  practice,
  press,
  reaction,
  records,
  settings,
  sheet,
  spray,
  strandCard,
  strandTest,
  tablet,
  taught,
  toner,
  trainer,
  warmthTrial,
  whatHappened,
  asked: {
    client: clientWords,
    hotTools: hotToolsWords,
    feelHair: feelHairWords,
    heatSpray: heatSprayWords,
  },
};
