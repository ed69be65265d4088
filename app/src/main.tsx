import '@fontsource/barlow/400.css';
import '@fontsource/barlow/500.css';
import '@fontsource/barlow/600.css';
import '@fontsource/barlow-semi-condensed/500.css';
import '@fontsource/barlow-semi-condensed/600.css';
import './theme/theme.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App';
import { startWeighing } from './fit/fitSession';
import { startAutosave } from './session/autosave';
import { startTeam } from './team/teamSession';
import { startTheme } from './theme/chosenTheme';

const root = document.getElementById('root');
if (root === null) throw new Error('the page has no root element');
startAutosave();
startWeighing();
startTheme();
void startTeam();
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
