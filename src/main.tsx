import './trustedTypes';

import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import { render } from 'solid-js/web';
import './base.css';
import { App } from './screens/App';
import { HandOverProvider } from './screens/handOver/handOverInUse';
import { RulerProvider } from './screens/ruler/rulerInUse';
import { createStation } from './station/createStation';
import { createDemo, findEdition } from './station/demo/createDemo';
import { createClockJumps } from './tablet/clockJumps';
import { createTablet } from './tablet/createTablet';
import { findHandOverParts, makeHandOver } from './tablet/handOver';
import { ofTablet } from './tablet/keep';
import { createRuler } from './tablet/ruler';

const place = document.getElementById('station');
if (place) {
  void findEdition().then((edition) =>
    render(() => {
      const station = createStation(edition, createClockJumps(ofTablet));
      const tablet = createTablet();
      const demo = createDemo(edition);
      const ruler = createRuler();
      return (
        <RulerProvider value={ruler}>
          <HandOverProvider value={makeHandOver(findHandOverParts())}>
            <App station={station} tablet={tablet} demo={demo} />
          </HandOverProvider>
        </RulerProvider>
      );
    }, place),
  );
}
