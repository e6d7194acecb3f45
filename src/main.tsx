import './trustedTypes';

import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import { render } from 'solid-js/web';
import './base.css';
import { App } from './screens/App';
import { createStation } from './station/createStation';

const place = document.getElementById('station');
if (place) {
  render(() => {
    const station = createStation();
    return <App station={station} />;
  }, place);
}
