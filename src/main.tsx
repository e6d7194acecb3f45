import './trustedTypes';

import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import { render } from 'solid-js/web';
import './base.css';
import { App } from './screens/App';
import { TabletFactsProvider } from './screens/diagnosis/diagnosisInUse';
import { HandOverProvider } from './screens/handOver/handOverInUse';
import { PinProvider } from './screens/pin/pinInUse';
import { RulerProvider } from './screens/ruler/rulerInUse';
import { LearningProvider } from './screens/taught/learningInUse';
import { UpdatesProvider } from './screens/update/updatesInUse';
import { createStation } from './station/createStation';
import { createDemo } from './station/demo/createDemo';
import { findEdition } from './station/findEdition';
import { createLearning } from './station/learning/createLearning';
import { createPin } from './station/pin/createPin';
import { createPractice } from './station/practice/createPractice';
import { createStartingAnew } from './station/startingAnew';
import { createClockJumps } from './tablet/clockJumps';
import { createTablet } from './tablet/createTablet';
import { createTabletFacts } from './tablet/createTabletFacts';
import { createUpdates, findUpdatesParts } from './tablet/createUpdates';
import { findHandOverParts, makeHandOver } from './tablet/handOver';
import { ofTablet } from './tablet/keep';
import { createRuler } from './tablet/ruler';

/** Keeps nothing. */
const nowhere = { getItem: () => null, setItem: () => undefined };

const place = document.getElementById('station');
if (place) {
  void findEdition().then((edition) => {
    render(() => {
      // The clock of practice is its own: what this tablet's did while it ran concerns the salon alone.
      const station = createStation(edition, createClockJumps(edition === 'practice' ? nowhere : ofTablet));
      const learning = createLearning(station, edition !== 'salon');
      const tablet = createTablet();
      const startAnew = createStartingAnew();
      const demo = createDemo(edition, startAnew);
      const practice = createPractice(edition, startAnew);
      const ruler = createRuler();
      const facts = createTabletFacts(edition === 'salon' ? ofTablet : nowhere);
      const updates = createUpdates(findUpdatesParts());
      const pin = createPin();
      return (
        <RulerProvider value={ruler}>
          <HandOverProvider value={makeHandOver(findHandOverParts())}>
            <LearningProvider value={learning}>
              <PinProvider value={pin}>
                <UpdatesProvider value={updates}>
                  <TabletFactsProvider value={facts}>
                    <App station={station} tablet={tablet} demo={demo} practice={practice} />
                  </TabletFactsProvider>
                </UpdatesProvider>
              </PinProvider>
            </LearningProvider>
          </HandOverProvider>
        </RulerProvider>
      );
    }, place);
  });
}
