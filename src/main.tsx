import './trustedTypes';

import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import { render } from 'solid-js/web';
import './base.css';

const place = document.getElementById('station');
if (place) render(() => <h1>{document.title}</h1>, place);
