import './trustedTypes';

import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import { render } from 'solid-js/web';
import './base.css';
import { App } from './screens/App';
import { createStation } from './station/createStation';
import { createDemo, findEdition } from './station/demo/createDemo';
import { createTablet } from './tablet/createTablet';

const place = document.getElementById('station');
if (place) {
  void findEdition().then((edition) =>
    render(() => {
      const station = createStation(edition);
      const tablet = createTablet();
      const demo = createDemo(edition);
      return <App station={station} tablet={tablet} demo={demo} />;
    }, place),
  );
}
