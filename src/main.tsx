import './trustedTypes';

import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import { render } from 'solid-js/web';
import './base.css';
import { App } from './screens/App';
import { createStation } from './station/createStation';
import { createTablet } from './tablet/createTablet';

const place = document.getElementById('station');
if (place) {
  render(() => {
    const station = createStation();
    const tablet = createTablet();
    return <App station={station} tablet={tablet} />;
  }, place);
}
