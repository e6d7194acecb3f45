import type { Words } from '../words';
import { alarm } from './alarm';
import { asking } from './asking';
import { bar } from './bar';
import { bench } from './bench';
import { cautionList } from './cautionList';
import { cautions } from './cautions';
import { chance } from './chance';
import { clock } from './clock';
import { clockDoubt } from './clockDoubt';
import { colourOn } from './colourOn';
import { cover } from './cover';
import { day } from './day';
import { decision } from './decision';
import { demo } from './demo';
import { diagnosis } from './diagnosis';
import { ended } from './ended';
import { finish } from './finish';
import { clientWords } from './forms/client';
import { feelHairWords } from './forms/feelHair';
import { heatSprayWords } from './forms/heatSpray';
import { hotToolsWords } from './forms/hotTools';
import { general } from './general';
import { hair } from './hair';
import { handOver } from './handOver';
import { heat } from './heat';
import { ingredients } from './ingredients';
import { kept } from './kept';
import { lastVisit } from './lastVisit';
import { leaving } from './leaving';
import { locale } from './locale';
import { mix } from './mix';
import { moments } from './moments';
import { nothingNew } from './nothingNew';
import { notices } from './notices';
import { others } from './others';
import { ownLessons } from './ownLessons';
import { pin } from './pin';
import { practice } from './practice';
import { press } from './press';
import { rail } from './rail';
import { reaction } from './reaction';
import { records } from './records';
import { refusals } from './refusals';
import { ruler } from './ruler';
import { rules } from './rules';
import { settings } from './settings';
import { sheet } from './sheet';
import { skinTest } from './skinTest';
import { skinTests } from './skinTests';
import { spray } from './spray';
import { start } from './start';
import { strandCard } from './strandCard';
import { strandTest } from './strandTest';
import { tablet } from './tablet';
import { taught } from './taught';
import { toner } from './toner';
import { trainer } from './trainer';
import { updates } from './updates';
import { warmthTrial } from './warmthTrial';
import { whatHappened } from './whatHappened';
import { windowPart } from './window';

/** Spanish, all topics. One line a topic. */
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
  cover,
  pin,
  diagnosis,
  updates,
  ownLessons,
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
